package saddlebar.model.store;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

import saddlebar.model.file.Hashes;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;
import saddlebar.model.store.RecordFiles.RecordFile;
import saddlebar.model.work.Work;

/**
 * One pass over record files, a line in memory at a time. A line that cannot be read, a broken chain and a torn last line are told as
 * problems with file and line; the reading goes on, and a line is handed out whenever it is itself whole.
 */
public final class RecordReading implements AutoCloseable {
    private static final int LONGEST_LINE = 16 << 20;

    private final RecordFiles files;
    private final List<RecordFile> todo;
    private final Map<String, Long> ends;
    private final Map<String, String> lastOfWriter = new HashMap<>();
    private final List<Problem> problems = new ArrayList<>();
    private int nextFile;
    private RecordFile file;
    private InputStream in;
    private final byte[] buffer = new byte[1 << 16];
    private int at;
    private int filled;
    private long offset;
    private int line;

    RecordReading(RecordFiles files, List<RecordFile> todo, Map<String, Long> ends) throws IOException {
        this.files = files;
        this.todo = todo;
        this.ends = new HashMap<>(ends);
        for (Path stray : files.strays()) {
            problems.add(Problem.of("stray-record-file", Severity.WARNING, stray.getFileName().toString(),
                    "This file in the records folder has no name of a record file and is not read; if it is a copy made by a synchronising"
                            + " program, compare it with the file of the nearest name."));
        }
    }

    /** The next record, or nothing after the last. */
    public Optional<RecordLine> next() throws IOException {
        while (in != null || open()) {
            long start = offset;
            byte[] bytes = readLine();
            if (bytes == null) {
                closeFile();
                continue;
            }
            line++;
            String sha256 = Hashes.sha256(bytes);
            String before = lastOfWriter.put(file.writer(), sha256);
            Optional<RecordLine> record = parse(bytes, sha256, start, before);
            if (record.isPresent()) {
                return record;
            }
        }
        return Optional.empty();
    }

    private Optional<RecordLine> parse(byte[] bytes, String sha256, long start, String before) {
        try {
            String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
            RecordLine record = RecordLine.parse(text, sha256, file.name(), line, start);
            if (!record.prev().equals(before)) {
                tell("broken-chain", Severity.ERROR, line == 1
                        ? "The record does not follow the last one of the month before: lines there were changed,"
                                + " taken out or lost after they were written. Compare with a backup of the records folder."
                        : "The record does not follow the line before it: lines were changed, taken out or put in after they were written."
                                + " Compare with a backup of this file.");
            }
            return Optional.of(record);
        } catch (CharacterCodingException e) {
            tell("unreadable-record", Severity.ERROR, "The line is not UTF-8 text. Compare with a backup of this file.");
        } catch (IOException e) {
            tell("unreadable-record", Severity.ERROR, "The line is no record (" + e.getMessage() + "). Compare with a backup of this file.");
        }
        return Optional.empty();
    }

    /** Runs to the end; one checkpoint a record. */
    public void forEach(Consumer<RecordLine> consumer, Work work) throws IOException {
        for (Optional<RecordLine> record = next(); record.isPresent(); record = next()) {
            work.checkpoint();
            consumer.accept(record.get());
        }
    }

    /** All that is left, in memory. */
    public List<RecordLine> toList() throws IOException {
        List<RecordLine> all = new ArrayList<>();
        forEach(all::add, Work.UNWATCHED);
        return all;
    }

    /** What was found wrong up to now. */
    public List<Problem> problems() {
        return List.copyOf(problems);
    }

    /** Bytes of whole lines read of each file, for {@link RecordBook#readAfter}. */
    public Map<String, Long> ends() {
        return Map.copyOf(ends);
    }

    private boolean open() throws IOException {
        while (nextFile < todo.size()) {
            file = todo.get(nextFile++);
            offset = ends.getOrDefault(file.name(), 0L);
            line = 0;
            FileChannel channel = FileChannel.open(file.path(), StandardOpenOption.READ);
            if (channel.size() < offset) {
                tell("broken-chain", Severity.ERROR, "The file is shorter than when it was last read: lines were taken out.");
                offset = 0;
            }
            if (offset > 0 && channel.size() == offset) { // nothing was appended: its lines need not be counted
                channel.close();
                continue;
            }
            chainUpTo(channel);
            channel.position(offset);
            in = Channels.newInputStream(channel);
            at = 0;
            filled = 0;
            return true;
        }
        return false;
    }

    /** The hash that the first line read must name, from the line before it or from the month before. */
    private void chainUpTo(FileChannel channel) throws IOException {
        if (offset > 0) {
            line = RecordFiles.lines(channel, offset);
            lastOfWriter.put(file.writer(), RecordFiles.tail(channel, offset).lastSha256().orElse(RecordLine.NO_PREV));
        } else if (!lastOfWriter.containsKey(file.writer())) {
            lastOfWriter.put(file.writer(), files.lastSha256Before(file.month(), file.writer()));
        }
    }

    /** The next whole line without its line feed; nothing at the end of the file, where a torn line is told. */
    private byte[] readLine() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(512);
        long length = 0;
        while (at < filled || fill()) {
            int from = at;
            while (at < filled && buffer[at] != '\n') {
                at++;
            }
            bytes.write(buffer, from, (int) Math.max(0, Math.min(at - from, LONGEST_LINE - length)));
            length += at - from;
            if (at < filled) {
                at++;
                offset += length + 1;
                ends.put(file.name(), offset);
                return bytes.toByteArray();
            }
        }
        if (length > 0) {
            line++;
            tell("torn-record", Severity.WARNING, "The last line was not written to its end, as when a program is killed; it was never confirmed"
                    + " and is left out. The next record sets it aside in a file of its own.");
        }
        return null;
    }

    private boolean fill() throws IOException {
        at = 0;
        filled = Math.max(0, in.read(buffer));
        return filled > 0;
    }

    private void tell(String code, Severity severity, String message) {
        problems.add(Problem.of(code, severity, file.name() + ":" + line, message));
    }

    private void closeFile() throws IOException {
        if (in != null) {
            in.close();
            in = null;
        }
    }

    @Override
    public void close() throws IOException {
        closeFile();
        nextFile = todo.size();
    }
}
