package saddlebar.model.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import saddlebar.model.file.Hashes;
import saddlebar.model.problem.Refusal;

/** A file from outside taken into a folder of ours: whole and on the disk under its name, or not there. */
final class InnerCopy {
    private InnerCopy() {
    }

    /**
     * Copies.
     *
     * @param sha256 of the source as it was looked at
     * @throws Refusal if the source is no longer what was looked at
     */
    static void copy(Path source, Path target, String sha256, Disk disk) throws IOException {
        Path folder = target.getParent();
        disk.createFolders(folder);
        Path pending = target.resolveSibling("." + target.getFileName() + ".pending");
        try {
            disk.copy(source, pending);
            disk.sync(pending);
            if (!Hashes.sha256(pending).equals(sha256)) {
                throw new Refusal(source.toString(), "changed while it was being read", "bring it again when the other program has saved it");
            }
            disk.rename(pending, target);
        } finally {
            Files.deleteIfExists(pending);
        }
        disk.syncFolder(folder);
        disk.syncFolder(folder.getParent());
    }
}
