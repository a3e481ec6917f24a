package saddlebar.model.store;

import java.io.IOException;
import java.nio.file.Path;

/**
 * Every change that this package makes on a disk, one small step a method, so that a test can stop at any of them. What is written counts
 * as lasting only after {@link #sync}; a rename, a new or a removed file only after {@link #syncFolder}.
 */
interface Disk {
    /** Writes a whole file, new or over the old one. */
    void write(Path file, byte[] bytes) throws IOException;

    /** Writes at the end of a file, made if absent. */
    void append(Path file, byte[] bytes) throws IOException;

    /** Cuts a file to its first bytes. */
    void truncate(Path file, long length) throws IOException;

    void copy(Path from, Path to) throws IOException;

    /** Replaces {@code to} in one step. */
    void rename(Path from, Path to) throws IOException;

    void delete(Path file) throws IOException;

    void createFolders(Path folder) throws IOException;

    void sync(Path file) throws IOException;

    void syncFolder(Path folder) throws IOException;
}
