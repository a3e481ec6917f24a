package saddlebar.model.store;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.YearMonth;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import saddlebar.model.file.Hashes;

/** The files of a records folder: {@code YYYY-MM.<writer>.jsonl}, each writer's files one chain in the order of the months. */
final class RecordFiles {
    private static final Pattern NAME = Pattern.compile("(\\d{4}-(?:0[1-9]|1[0-2]))\\.([a-z0-9-]+)\\.jsonl");
    private static final Pattern SET_ASIDE = Pattern.compile(".*\\.torn-\\d+\\.txt|\\..*");

    private final Path folder;

    RecordFiles(Path folder) {
        this.folder = folder;
    }

    /** One file of the folder. */
    record RecordFile(Path path, YearMonth month, String writer) {
        String name() {
            return path.getFileName().toString();
        }
    }

    /** The end of a file: bytes up to its last line feed, bytes in all, hash of the last whole line if there is one. */
    record Tail(long wholeLines, long size, Optional<String> lastSha256) {
    }

    /** By month, then writer. */
    List<RecordFile> all() throws IOException {
        return paths().stream().flatMap(path -> parse(path).stream()).toList();
    }

    /** What lies there and is no record file of ours, such as a copy that a synchronising program made of a conflict. */
    List<Path> strays() throws IOException {
        return paths().stream().filter(path -> parse(path).isEmpty() && !SET_ASIDE.matcher(path.getFileName().toString()).matches()).toList();
    }

    private List<Path> paths() throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> paths = Files.list(folder)) {
            return paths.filter(Files::isRegularFile).sorted().toList();
        }
    }

    private static Optional<RecordFile> parse(Path path) {
        Matcher matcher = NAME.matcher(path.getFileName().toString());
        return matcher.matches() ? Optional.of(new RecordFile(path, YearMonth.parse(matcher.group(1)), matcher.group(2))) : Optional.empty();
    }

    RecordFile file(YearMonth month, String writer) {
        return new RecordFile(folder.resolve(month + "." + writer + ".jsonl"), month, writer);
    }

    /** The writer's last file before a month. */
    Optional<RecordFile> before(YearMonth month, String writer) throws IOException {
        return all().stream().filter(file -> file.writer().equals(writer) && file.month().isBefore(month)).reduce((a, b) -> b);
    }

    Optional<RecordFile> last(String writer) throws IOException {
        return all().stream().filter(file -> file.writer().equals(writer)).reduce((a, b) -> b);
    }

    /** Reads backwards from the end, so that it costs the same in a file of any length. */
    static Tail tail(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
            return tail(channel, channel.size());
        }
    }

    /** As if the file had only so many bytes. */
    static Tail tail(FileChannel channel, long size) throws IOException {
        long end = lineFeedBefore(channel, size);
        if (end < 0) {
            return new Tail(0, size, Optional.empty());
        }
        long start = lineFeedBefore(channel, end) + 1;
        ByteBuffer line = ByteBuffer.allocate(Math.toIntExact(end - start));
        readFully(channel, line, start);
        return new Tail(end + 1, size, Optional.of(Hashes.sha256(line.array())));
    }

    /** The whole line that starts at a place, without its line feed. */
    static byte[] lineAt(FileChannel channel, long offset) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(1024);
        ByteBuffer buffer = ByteBuffer.allocate(2048);
        for (long at = offset;; at += buffer.position()) {
            buffer.clear();
            if (channel.read(buffer, at) < 1) {
                throw new IOException("no whole line stands at byte " + offset);
            }
            for (int i = 0; i < buffer.position(); i++) {
                if (buffer.get(i) == '\n') {
                    bytes.write(buffer.array(), 0, i);
                    return bytes.toByteArray();
                }
            }
            bytes.write(buffer.array(), 0, buffer.position());
        }
    }

    /** Line feeds within the first bytes. */
    static int lines(FileChannel channel, long size) throws IOException {
        int lines = 0;
        ByteBuffer buffer = ByteBuffer.allocate(1 << 16);
        for (long at = 0; at < size; at += buffer.position()) {
            buffer.clear().limit((int) Math.min(buffer.capacity(), size - at));
            readFully(channel, buffer, at);
            for (int i = 0; i < buffer.position(); i++) {
                lines += buffer.get(i) == '\n' ? 1 : 0;
            }
        }
        return lines;
    }

    /** Hash of the writer's last whole line before a month; zeros if there is none. */
    String lastSha256Before(YearMonth month, String writer) throws IOException {
        for (Optional<RecordFile> file = before(month, writer); file.isPresent(); file = before(file.get().month(), writer)) {
            Optional<String> last = tail(file.get().path()).lastSha256();
            if (last.isPresent()) {
                return last.get();
            }
        }
        return RecordLine.NO_PREV;
    }

    /** Place of the last line feed before a place, -1 if there is none. */
    private static long lineFeedBefore(FileChannel channel, long before) throws IOException {
        ByteBuffer buffer = ByteBuffer.allocate(8192);
        for (long end = before; end > 0;) {
            long start = Math.max(0, end - buffer.capacity());
            buffer.clear().limit((int) (end - start));
            readFully(channel, buffer, start);
            for (int i = buffer.position() - 1; i >= 0; i--) {
                if (buffer.get(i) == '\n') {
                    return start + i;
                }
            }
            end = start;
        }
        return -1;
    }

    static void readFully(FileChannel channel, ByteBuffer buffer, long from) throws IOException {
        for (long at = from; buffer.hasRemaining();) {
            int n = channel.read(buffer, at);
            if (n < 0) {
                throw new IOException("the file became shorter while it was read");
            }
            at += n;
        }
    }

    /** A name for files, of letters, digits and hyphens, from whatever a system calls a person and a machine. */
    static String writer(String user, String host) {
        String name = (user + "-" + host).toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        return name.isEmpty() ? "writer" : name;
    }
}
