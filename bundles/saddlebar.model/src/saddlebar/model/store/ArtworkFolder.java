package saddlebar.model.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import saddlebar.model.file.Hashes;
import saddlebar.model.problem.Refusal;

/**
 * The folder {@code artwork}: what was brought, never changed. A later revision of {@code heron.svg} lies beside it as {@code heron.r2.svg}.
 */
final class ArtworkFolder {
    private static final Pattern UNFIT = Pattern.compile("[<>:\"/\\\\|?*\\p{Cntrl}]");
    private static final Pattern REVISION = Pattern.compile("(.*)\\.r(\\d{1,6})");
    private static final Set<String> DEVICES = Set.of("con", "prn", "aux", "nul"); // a name that some systems do not take

    private final Path folder;
    private final Disk disk;

    ArtworkFolder(Path folder, Disk disk) {
        this.folder = folder;
        this.disk = disk;
    }

    BroughtArtwork bring(Path source) throws IOException {
        if (!Files.isRegularFile(source)) {
            throw new Refusal(source.toString(), "is not a file", "name the artwork file");
        }
        String original = source.getFileName().toString();
        String name = UNFIT.matcher(original).replaceAll("-").replaceAll("^\\.+", "");
        int dot = name.lastIndexOf('.');
        String stem = dot > 0 ? name.substring(0, dot) : name;
        String extension = dot > 0 ? name.substring(dot) : "";
        Matcher revised = REVISION.matcher(stem);
        stem = revised.matches() ? revised.group(1) : stem;
        stem = stem.isEmpty() || DEVICES.contains(stem.toLowerCase(java.util.Locale.ROOT)) ? "artwork-" + stem : stem;
        String sha256 = Hashes.sha256(source);
        TreeMap<Integer, Path> revisions = revisions(stem, extension);
        for (Map.Entry<Integer, Path> known : revisions.entrySet()) {
            if (Hashes.sha256(known.getValue()).equals(sha256)) {
                return brought(known.getValue(), original, sha256, known.getKey(), false);
            }
        }
        int revision = revisions.isEmpty() ? 1 : revisions.lastKey() + 1;
        Path target = folder.resolve(revision == 1 ? stem + extension : stem + ".r" + revision + extension);
        InnerCopy.copy(source, target, sha256, disk);
        return brought(target, original, sha256, revision, true);
    }

    private static BroughtArtwork brought(Path file, String original, String sha256, int revision, boolean isNew) {
        return new BroughtArtwork(file.getParent().getFileName() + "/" + file.getFileName(), original, sha256, revision, isNew);
    }

    private TreeMap<Integer, Path> revisions(String stem, String extension) throws IOException {
        TreeMap<Integer, Path> found = new TreeMap<>();
        if (!Files.isDirectory(folder)) {
            return found;
        }
        try (Stream<Path> files = Files.list(folder)) {
            files.sorted().forEach(file -> {
                String name = file.getFileName().toString();
                if (name.equalsIgnoreCase(stem + extension)) {
                    found.put(1, file);
                } else if (name.length() > extension.length() && name.regionMatches(true, name.length() - extension.length(), extension, 0,
                        extension.length())) {
                    Matcher matcher = REVISION.matcher(name.substring(0, name.length() - extension.length()));
                    if (matcher.matches() && matcher.group(1).equalsIgnoreCase(stem)) {
                        found.put(Integer.valueOf(matcher.group(2)), file);
                    }
                }
            });
        }
        return found;
    }
}
