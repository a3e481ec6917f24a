package saddlebar.model.index;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import com.google.gson.Gson;
import com.google.gson.JsonParseException;

import saddlebar.model.file.PendingFile;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Severity;
import saddlebar.model.store.RecordFileState;

/**
 * The small file beside the index that says of what it is an index: another format, lens, length, checksum or past of a record file makes it useless.
 *
 * @param format   of the index's maps
 * @param lens     version of the lens
 * @param data     name of the file with the maps
 * @param size     its bytes
 * @param crc32c   over all of it, so that one turned bit is seen (RFC 3720, appendix B.4)
 * @param files    the record files as they were read
 * @param problems what was wrong with them
 */
record IndexStamp(int format, String lens, String data, long size, long crc32c, Map<String, RecordFileState> files, List<Problem> problems) {
    static final int FORMAT = 1;
    private static final Gson JSON = new Gson();

    /** What is kept of a problem; none of a record file has a place on the glass. */
    private record Told(String code, String severity, String where, String message) {
        static Told of(Problem problem) {
            return new Told(problem.code(), problem.severity().name(), problem.where(), problem.message());
        }

        Problem problem() {
            return Problem.of(code, Severity.valueOf(severity), where, message);
        }
    }

    private record Text(int format, String lens, String data, long size, long crc32c, Map<String, RecordFileState> files, List<Told> problems) {
    }

    void write(Path file) throws IOException {
        Text text = new Text(format, lens, data, size, crc32c, files, problems.stream().map(Told::of).toList());
        try (PendingFile pending = PendingFile.beside(file)) {
            pending.out().write(JSON.toJson(text).getBytes(StandardCharsets.UTF_8));
            pending.commit();
        }
    }

    /** Nothing if there is none, or if it cannot be read: then the index is built again. */
    static Optional<IndexStamp> read(Path file) throws IOException {
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        try {
            Text text = JSON.fromJson(Files.readString(file, StandardCharsets.UTF_8), Text.class);
            if (text == null || text.lens == null || text.data == null || text.files == null || text.problems == null) {
                return Optional.empty();
            }
            return Optional.of(new IndexStamp(text.format, text.lens, text.data, text.size, text.crc32c, text.files,
                    text.problems.stream().map(Told::problem).toList()));
        } catch (JsonParseException | CharacterCodingException | IllegalArgumentException | NullPointerException e) {
            return Optional.empty(); // written by something else, or damaged
        }
    }
}
