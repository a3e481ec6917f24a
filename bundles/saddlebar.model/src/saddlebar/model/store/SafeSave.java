package saddlebar.model.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import saddlebar.model.file.Hashes;
import saddlebar.model.problem.Refusal;

/**
 * Saves several files of one folder as one step: after a crash at any instant either all of them are new or none. The new files are written
 * beside the old ones and synced; then a list of them, {@code .save}, is renamed into place: that is the moment of the save. Then each new
 * file takes its place, after the old one was copied to the generations. Whoever next opens the folder for writing ends what was begun.
 */
final class SafeSave {
    /** Old generations kept of each file. */
    static final int GENERATIONS = 5;
    static final String GENERATIONS_FOLDER = ".generations";
    static final String LIST = ".save";

    private static final String PENDING = ".pending";
    private static final Pattern GENERATION = Pattern.compile("(.*)\\.(\\d{6,})\\." + ModelResource.EXTENSION);

    private final Path root;
    private final Disk disk;

    SafeSave(Path root, Disk disk) {
        this.root = root;
        this.disk = disk;
    }

    /**
     * Saves all or nothing. Every call needs the folder's lock.
     *
     * @param files new bytes of each file by its relative path with {@code /}; absent bytes: the file goes
     */
    void save(SortedMap<String, Optional<byte[]>> files) throws IOException {
        finish();
        List<Object> list = new ArrayList<>();
        TreeSet<Path> folders = new TreeSet<>();
        try {
            for (Map.Entry<String, Optional<byte[]>> file : files.entrySet()) {
                Path target = root.resolve(file.getKey());
                Map<String, Object> entry = new LinkedHashMap<>();
                entry.put("file", file.getKey());
                if (file.getValue().isPresent()) {
                    byte[] bytes = file.getValue().get();
                    entry.put("sha256", Hashes.sha256(bytes));
                    createFolders(target.getParent());
                    disk.write(pending(target), bytes);
                    disk.sync(pending(target));
                    folders.add(target.getParent());
                }
                list.add(entry);
            }
            for (Path folder : folders) {
                disk.syncFolder(folder);
            }
            Path listFile = root.resolve(LIST);
            disk.write(pending(listFile), Json.write(list).getBytes(StandardCharsets.UTF_8));
            disk.sync(pending(listFile));
            disk.rename(pending(listFile), listFile);
        } catch (IOException | RuntimeException e) {
            dropPending(files, e);
            throw e;
        }
        disk.syncFolder(root);
        finish();
    }

    private void dropPending(SortedMap<String, Optional<byte[]>> files, Exception failure) {
        try {
            for (String file : files.keySet()) {
                disk.delete(pending(root.resolve(file)));
            }
            disk.delete(pending(root.resolve(LIST)));
        } catch (IOException e) {
            failure.addSuppressed(e); // the next finish() clears them
        }
    }

    /** Whether a save was begun, came past its moment, and has not ended. */
    boolean isUnfinished() {
        return Files.exists(root.resolve(LIST));
    }

    /** Ends what a killed program left: a save past its moment is completed, what came short of it is removed. */
    void finish() throws IOException {
        Path list = root.resolve(LIST);
        if (Files.exists(list)) {
            complete(read(list));
            disk.delete(list);
            disk.syncFolder(root);
        } else {
            clearPending();
        }
    }

    private static SortedMap<String, String> read(Path list) throws IOException {
        SortedMap<String, String> files = new TreeMap<>();
        if (Json.read(Files.readString(list, StandardCharsets.UTF_8)) instanceof List<?> entries) {
            for (Object entry : entries) {
                if (entry instanceof Map<?, ?> map && map.get("file") instanceof String file) {
                    files.put(file, map.get("sha256") instanceof String sha256 ? sha256 : "");
                    continue;
                }
                throw new Refusal(list.toString(), "is no list of files to save", "look at it, then delete it");
            }
        }
        return files;
    }

    private void complete(SortedMap<String, String> files) throws IOException {
        TreeSet<Path> folders = new TreeSet<>();
        for (Map.Entry<String, String> file : files.entrySet()) {
            Path target = new InnerPaths(root).resolve(file.getKey()); // the list is a file like any other: it is not trusted either
            Path pending = pending(target);
            boolean goes = file.getValue().isEmpty();
            if (goes && Files.exists(target)) {
                keepGeneration(file.getKey(), target);
                disk.delete(target);
                folders.add(target.getParent());
            } else if (!goes && Files.exists(pending)) {
                if (!file.getValue().equals(Hashes.sha256(pending))) {
                    throw new Refusal(pending.toString(), "is not what the save had written", "delete it and " + root.resolve(LIST)
                            + " to stay with what was saved before");
                }
                keepGeneration(file.getKey(), target);
                disk.rename(pending, target);
                folders.add(target.getParent());
            }
        }
        for (Path folder : folders) {
            disk.syncFolder(folder);
        }
    }

    private void clearPending() throws IOException {
        for (Path folder : List.of(root, root.resolve("windows"))) {
            if (Files.isDirectory(folder)) {
                for (Path file : list(folder)) {
                    String name = file.getFileName().toString();
                    if (name.startsWith(".") && name.endsWith("." + ModelResource.EXTENSION + PENDING) || name.equals(LIST + PENDING)) {
                        disk.delete(file);
                    }
                }
            }
        }
    }

    /** Copied, not linked: an editor that writes into the present file in place would change a linked generation with it. */
    private void keepGeneration(String file, Path target) throws IOException {
        if (!Files.exists(target)) {
            return;
        }
        SortedMap<Long, Path> generations = generations(file);
        if (!generations.isEmpty() && Files.mismatch(generations.get(generations.lastKey()), target) < 0) {
            return; // kept already, before the crash
        }
        long number = generations.isEmpty() ? 1 : generations.lastKey() + 1;
        Path kept = generationsFolder(file).resolve(String.format(java.util.Locale.ROOT, "%s.%06d.%s", stem(file), number, ModelResource.EXTENSION));
        createFolders(kept.getParent());
        disk.copy(target, pending(kept));
        disk.sync(pending(kept));
        disk.rename(pending(kept), kept);
        generations.put(number, kept);
        while (generations.size() > GENERATIONS) {
            disk.delete(generations.remove(generations.firstKey()));
        }
        disk.syncFolder(kept.getParent());
    }

    /** The kept generations of a file by number, the latest last. */
    SortedMap<Long, Path> generations(String file) throws IOException {
        SortedMap<Long, Path> found = new TreeMap<>();
        Path folder = generationsFolder(file);
        if (Files.isDirectory(folder)) {
            for (Path path : list(folder)) {
                Matcher matcher = GENERATION.matcher(path.getFileName().toString());
                if (matcher.matches() && matcher.group(1).equals(stem(file))) {
                    found.put(Long.valueOf(matcher.group(2)), path);
                }
            }
        }
        return found;
    }

    private Path generationsFolder(String file) {
        int slash = file.lastIndexOf('/');
        Path folder = root.resolve(GENERATIONS_FOLDER);
        return slash < 0 ? folder : folder.resolve(file.substring(0, slash));
    }

    private static String stem(String file) {
        return file.substring(file.lastIndexOf('/') + 1, file.lastIndexOf('.'));
    }

    private void createFolders(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            disk.createFolders(folder);
            disk.syncFolder(folder.getParent());
        }
    }

    private static Path pending(Path target) {
        return target.resolveSibling("." + target.getFileName().toString().replaceFirst("^\\.", "") + PENDING);
    }

    private static List<Path> list(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }
}
