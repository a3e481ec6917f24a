package saddlebar.production.make;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonParseException;
import com.google.gson.reflect.TypeToken;

import saddlebar.model.file.Hashes;
import saddlebar.model.file.PendingFile;

/**
 * What lies under {@code made/} and from what it was made, so that nothing is made twice. It may be deleted at any time: then all is made again. Safe
 * for several threads.
 */
public final class MadeIndex {
    static final String FILE = "index.json";
    private static final Gson JSON = new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create();

    private final Path made;
    private final Map<String, MadeFileFacts> byFile;
    private boolean changed;

    private MadeIndex(Path made, Map<String, MadeFileFacts> byFile) {
        this.made = made;
        this.byFile = byFile;
    }

    /** @param made the folder; an index that cannot be read counts as absent, since all of it can be made again */
    static MadeIndex read(Path made) throws IOException {
        Path file = made.resolve(FILE);
        Map<String, MadeFileFacts> byFile = new TreeMap<>();
        if (Files.exists(file)) {
            try (Reader in = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
                Map<String, MadeFileFacts> read = JSON.fromJson(in, new TypeToken<Map<String, MadeFileFacts>>() {
                }.getType());
                if (read != null && read.values().stream().noneMatch(facts -> facts == null || facts.key() == null || facts.sha256() == null)) {
                    byFile.putAll(read);
                }
            } catch (JsonParseException | NullPointerException damaged) {
                byFile.clear();
            }
        }
        return new MadeIndex(made, byFile);
    }

    /** The file's facts, if it still is what was made from the same. */
    Optional<MadeFileFacts> kept(String file, String key) throws IOException {
        MadeFileFacts facts;
        synchronized (this) {
            facts = byFile.get(file);
        }
        if (facts == null || !facts.key().equals(key)) {
            return Optional.empty();
        }
        Path path = made.resolve(file);
        if (!Files.isRegularFile(path)) {
            return Optional.empty();
        }
        BasicFileAttributes now = Files.readAttributes(path, BasicFileAttributes.class);
        boolean untouched = now.size() == facts.bytes() && now.lastModifiedTime().toMillis() == facts.modified();
        return untouched || Hashes.sha256(path).equals(facts.sha256()) ? Optional.of(facts) : Optional.empty();
    }

    /** What is known of a file, whether or not it is still so. */
    synchronized Optional<MadeFileFacts> facts(String file) {
        return Optional.ofNullable(byFile.get(file));
    }

    /** Adds one thing that is known of a file. */
    synchronized void note(String file, String name, String value) {
        MadeFileFacts facts = byFile.get(file);
        if (facts != null) {
            Map<String, String> more = new TreeMap<>(facts.facts());
            more.put(name, value);
            byFile.put(file, new MadeFileFacts(facts.key(), facts.sha256(), facts.bytes(), facts.modified(), more));
            changed = true;
        }
    }

    /** Enters a file that was just made. */
    MadeFileFacts enter(String file, String key, String sha256, Map<String, String> found) throws IOException {
        BasicFileAttributes now = Files.readAttributes(made.resolve(file), BasicFileAttributes.class);
        MadeFileFacts facts = new MadeFileFacts(key, sha256, now.size(), now.lastModifiedTime().toMillis(), found);
        synchronized (this) {
            byFile.put(file, facts);
            changed = true;
        }
        return facts;
    }

    /** Files that were made once under a folder and are not wanted any more: deleted, so that nobody prints an old sheet. */
    synchronized int forgetOthers(String under, Set<String> wanted) throws IOException {
        int gone = 0;
        for (String file : List.copyOf(byFile.keySet())) {
            if (file.startsWith(under) && !wanted.contains(file)) {
                Files.deleteIfExists(made.resolve(file));
                byFile.remove(file);
                changed = true;
                gone++;
            }
        }
        return gone;
    }

    synchronized void write() throws IOException {
        if (!changed) {
            return;
        }
        try (PendingFile pending = PendingFile.beside(made.resolve(FILE))) {
            pending.out().write(JSON.toJson(byFile).getBytes(StandardCharsets.UTF_8));
            pending.commit();
        }
        changed = false;
    }
}
