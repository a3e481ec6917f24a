package saddlebar.production.make;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

import saddlebar.model.file.Hashes;
import saddlebar.model.file.PendingFile;

/** Writes a list if its text has changed: the text is its own content key. */
final class ListStep {
    private final Path made;
    private final MadeIndex index;

    ListStep(Path made, MadeIndex index) {
        this.made = made;
        this.index = index;
    }

    MadeList write(String what, String file, String text, boolean afresh) throws IOException {
        long begun = System.nanoTime();
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        String sha256 = Hashes.sha256(bytes);
        String key = ContentKey.of("list", what, sha256);
        Optional<MadeFileFacts> kept = afresh ? Optional.empty() : index.kept(file, key);
        if (kept.isPresent()) {
            return new MadeList(what, file, key, sha256, false, 0);
        }
        try (PendingFile pending = PendingFile.beside(made.resolve(file))) {
            pending.out().write(bytes);
            pending.commit();
        }
        index.enter(file, key, sha256, Map.of());
        return new MadeList(what, file, key, sha256, true, (System.nanoTime() - begun) / 1e9);
    }
}
