package saddlebar.model.store;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;

import saddlebar.model.file.PendingFile;
import saddlebar.model.problem.Refusal;

/** A new folder that is whole or absent: filled under a hidden name beside its place, then moved there. */
final class FolderDraft {
    private FolderDraft() {
    }

    /** Fills a folder. */
    interface Filling {
        void fill(Path draft) throws IOException;
    }

    /** @throws Refusal if something else is there already */
    static void make(Path path, Disk disk, Filling filling) throws IOException {
        Path target = path.toAbsolutePath().normalize();
        requireFree(target);
        Path parent = target.getParent();
        Files.createDirectories(parent);
        Path draft = parent.resolve("." + target.getFileName() + ".new-" + UUID.randomUUID());
        try {
            Files.createDirectory(draft);
        } catch (FileSystemException e) {
            throw PendingFile.namedFor(target, e);
        }
        boolean done = false;
        try {
            filling.fill(draft);
            sync(draft, disk);
            Files.deleteIfExists(target); // an empty folder
            disk.rename(draft, target);
            done = true;
            disk.syncFolder(parent);
        } finally {
            if (!done) {
                remove(draft);
            }
        }
    }

    private static void requireFree(Path target) throws IOException {
        if (!Files.exists(target)) {
            return;
        }
        if (!Files.isDirectory(target)) {
            throw new Refusal(target.toString(), "is a file", "choose a name that is free");
        }
        try (Stream<Path> inside = Files.list(target)) {
            if (inside.findAny().isPresent()) {
                throw new Refusal(target.toString(), "exists and is not empty", "choose a folder that is new or empty");
            }
        }
    }

    private static void sync(Path draft, Disk disk) throws IOException {
        for (Path path : all(draft)) {
            if (Files.isDirectory(path)) {
                disk.syncFolder(path);
            } else {
                disk.sync(path);
            }
        }
    }

    private static void remove(Path draft) throws IOException {
        for (Path path : all(draft)) {
            Files.deleteIfExists(path);
        }
    }

    /** Innermost first. */
    private static List<Path> all(Path folder) throws IOException {
        try (Stream<Path> paths = Files.walk(folder)) {
            return paths.sorted(Comparator.reverseOrder()).toList();
        }
    }
}
