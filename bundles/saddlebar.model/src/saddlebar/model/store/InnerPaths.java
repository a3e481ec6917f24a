package saddlebar.model.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;

import saddlebar.model.problem.Refusal;
import saddlebar.model.units.Require;

/** Paths written in a folder's files, which never lead out of it: not by {@code ..}, not by an absolute path, not by a link on the disk. */
final class InnerPaths {
    private static final String REMEDY = "use a path inside the folder, with / between its parts";

    private final Path root;

    /** @param root an existing folder */
    InnerPaths(Path root) throws IOException {
        this.root = root.toRealPath();
    }

    Path root() {
        return root;
    }

    /** @throws Refusal if the path leads out, or its form means different things on different systems */
    Path resolve(String relative) throws IOException {
        Require.text("relative path", relative);
        if (relative.indexOf('\\') >= 0 || relative.indexOf('\0') >= 0 || relative.indexOf(':') >= 0 || relative.startsWith("/")) {
            throw new Refusal(shown(relative), "is not a relative path of the folder " + root, REMEDY);
        }
        Path path;
        try {
            path = Path.of(relative);
        } catch (InvalidPathException e) {
            throw new Refusal(shown(relative), "is not a path", REMEDY, e);
        }
        for (Path part : path) {
            if (part.toString().equals("..")) {
                throw new Refusal(shown(relative), "leads out of the folder " + root, REMEDY);
            }
        }
        Path whole = root.resolve(path).normalize();
        if (path.isAbsolute() || !whole.startsWith(root) || whole.equals(root)) {
            throw new Refusal(shown(relative), "leads out of the folder " + root, REMEDY);
        }
        requireInside(whole);
        return whole;
    }

    /** Follows what already exists on the way, links included. */
    void requireInside(Path whole) throws IOException {
        Path existing = whole;
        while (!Files.exists(existing, LinkOption.NOFOLLOW_LINKS)) {
            existing = existing.getParent();
            if (existing == null) {
                throw new Refusal(whole.toString(), "leads out of the folder " + root, REMEDY);
            }
        }
        if (!Files.exists(existing)) {
            throw new Refusal(whole.toString(), "passes a link that leads nowhere", "replace the link by the file itself");
        }
        if (!existing.toRealPath().startsWith(root)) {
            throw new Refusal(whole.toString(), "leads out of the folder " + root + " by a link", "replace the link by the file itself");
        }
    }

    /** The path of an inner file as it is written in files: with {@code /}. */
    String relative(Path inner) throws IOException {
        Path whole = inner.toAbsolutePath().normalize();
        if (whole.startsWith(root) && !whole.equals(root)) {
            requireInside(whole);
            return slashes(root.relativize(whole));
        }
        Path real = inner.toRealPath();
        if (!real.startsWith(root) || real.equals(root)) {
            throw new Refusal(inner.toString(), "does not lie in the folder " + root, "copy it there");
        }
        return slashes(root.relativize(real));
    }

    static String slashes(Path relative) {
        StringBuilder text = new StringBuilder();
        for (Path part : relative) {
            text.append(text.isEmpty() ? "" : "/").append(part);
        }
        return text.toString();
    }

    private static String shown(String relative) {
        return relative.replaceAll("\\p{Cntrl}", "?");
    }
}
