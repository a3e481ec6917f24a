package saddlebar.materials.job;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import saddlebar.model.problem.Problem;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.RecordBook;
import saddlebar.model.store.RecordLine;
import saddlebar.model.store.RecordReading;

/**
 * The records that cost has to do with, in the order in which things happened; corrected ones are left out.
 *
 * @param commission of this commission
 * @param studio     of its studio, which other commissions may share
 */
public record JobRecords(List<RecordLine> commission, List<RecordLine> studio, List<Problem> problems) {
    private static final int LEAST_PIECES = 10;
    private static final Set<String> KINDS = Set.of("stencil", "mix", "pull", "fire", "glaze", "remake", "cost", "stock");

    public static JobRecords of(CommissionFolder folder) throws IOException {
        List<Problem> problems = new ArrayList<>();
        List<RecordLine> own = lines(folder.records(), problems);
        List<RecordLine> shared = lines(folder.studioFolder().records(), problems);
        Set<String> superseded = new HashSet<>();
        Stream.concat(own.stream(), shared.stream()).forEach(line -> superseded.addAll(line.supersedes()));
        return new JobRecords(kept(own, superseded), kept(shared, superseded), problems);
    }

    private static List<RecordLine> lines(RecordBook book, List<Problem> problems) throws IOException {
        try (RecordReading reading = book.read()) {
            List<RecordLine> lines = reading.toList();
            problems.addAll(reading.problems());
            return lines;
        }
    }

    private static List<RecordLine> kept(List<RecordLine> lines, Set<String> superseded) {
        return lines.stream().filter(line -> KINDS.contains(line.kind()) && !superseded.contains(line.id())).sorted(Comparator.comparing(RecordLine::time))
                .toList();
    }

    /** Both books. */
    public Stream<RecordLine> all(String kind) {
        return Stream.concat(studio.stream(), commission.stream()).filter(line -> line.kind().equals(kind));
    }

    /**
     * Pieces made again for each piece made, by the records of both books; empty before ten pieces were made, since a smaller number tells nothing.
     */
    public Optional<Double> remakeShare() {
        long made = Stream.of("pull", "fire", "glaze").flatMap(this::all).map(JobRecords::piece).filter(piece -> !piece.isEmpty()).distinct().count();
        long again = all("remake").count();
        return made < LEAST_PIECES ? Optional.empty() : Optional.of(Math.min(1, (double) again / made));
    }

    private static String piece(RecordLine line) {
        return text(line, "pieceId").isEmpty() ? text(line, "piece").isEmpty() ? "" : text(line, "window") + "/" + text(line, "piece") : text(line, "pieceId");
    }

    static double number(RecordLine line, String key, double otherwise) {
        return line.settings().get(key) instanceof Number number ? number.doubleValue() : otherwise;
    }

    static String text(RecordLine line, String key) {
        return line.settings().get(key) instanceof String text ? text : "";
    }
}
