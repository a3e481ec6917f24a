package saddlebar.production.trace;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import saddlebar.model.commission.JoinedCommission;
import saddlebar.model.index.RecordIndex;
import saddlebar.model.problem.Problem;
import saddlebar.model.problem.Refusal;
import saddlebar.model.problem.Severity;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.RecordBook;
import saddlebar.model.store.RecordLine;
import saddlebar.model.store.StudioFolder;
import saddlebar.model.work.Work;
import saddlebar.trace.lineage.Deed;
import saddlebar.trace.lineage.Lineage;
import saddlebar.trace.lineage.RecordThings;

/**
 * The record books that belong together, each with its index: a commission's own and those of its studio; or a studio's and those of every commission that
 * joined it. Open for reading only.
 */
public final class TraceRoom implements AutoCloseable {
    private static final String COMMISSION_FILE = "commission.saddlebar";

    /** One record book. */
    public record Source(String name, Path folder, RecordBook book, RecordIndex index, Optional<CommissionFolder> commission) {
    }

    private final List<Source> sources = new ArrayList<>();
    private final List<AutoCloseable> opened = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();
    private Optional<CommissionFolder> commission = Optional.empty();
    private StudioFolder studio;

    private TraceRoom() {
    }

    /**
     * @param folder of a commission or of a studio
     * @throws Refusal if it is neither
     */
    public static TraceRoom open(Path folder, Work work) throws IOException {
        TraceRoom room = new TraceRoom();
        boolean done = false;
        try {
            if (Files.isRegularFile(folder.resolve(COMMISSION_FILE))) {
                CommissionFolder one = room.keep(CommissionFolder.open(folder, Access.READ));
                room.ofCommission(one, work);
            } else {
                room.ofStudio(folder, work);
            }
            done = true;
            return room;
        } finally {
            if (!done) {
                room.close();
            }
        }
    }

    /** Over a commission that somebody else opened and will close. */
    public static TraceRoom over(CommissionFolder commission, Work work) throws IOException {
        TraceRoom room = new TraceRoom();
        boolean done = false;
        try {
            room.ofCommission(commission, work);
            done = true;
            return room;
        } finally {
            if (!done) {
                room.close();
            }
        }
    }

    private void ofCommission(CommissionFolder one, Work work) throws IOException {
        commission = Optional.of(one);
        studio = one.studioFolder();
        add(name(one), one.path(), one.records(), Optional.of(one), work);
        if (Files.isDirectory(studio.path().resolve("records"))) {
            add(one.hasOwnStudio() ? "studio" : studio.path().getFileName().toString(), studio.path(), studio.records(), Optional.empty(), work);
        }
    }

    private void ofStudio(Path folder, Work work) throws IOException {
        studio = keep(StudioFolder.open(folder, Access.READ));
        add(folder.toAbsolutePath().normalize().getFileName().toString(), studio.path(), studio.records(), Optional.empty(), work);
        for (Map.Entry<JoinedCommission, Path> joined : studio.commissions().entrySet()) {
            if (!Files.isRegularFile(joined.getValue().resolve(COMMISSION_FILE))) {
                problems.add(Problem.of("commission-missing", Severity.WARNING, joined.getKey().getName(),
                        "This commission joined the studio and is not in " + joined.getValue() + ": its records are not looked at. Put it back there."));
                continue;
            }
            CommissionFolder one = keep(CommissionFolder.open(joined.getValue(), Access.READ));
            add(name(one), one.path(), one.records(), Optional.of(one), work);
        }
    }

    private static String name(CommissionFolder one) {
        String title = one.commission().getTitle();
        return title == null || title.isBlank() ? one.path().getFileName().toString() : title;
    }

    private <T extends AutoCloseable> T keep(T one) {
        opened.add(one);
        return one;
    }

    private void add(String name, Path folder, RecordBook book, Optional<CommissionFolder> of, Work work) throws IOException {
        RecordIndex index = keep(RecordIndex.open(folder, book, new RecordThings(), work));
        problems.addAll(index.problems());
        sources.add(new Source(name, folder, book, index, of));
    }

    /** A fresh lineage for one question. */
    public Lineage lineage() {
        return new Lineage(sources.stream().map(Source::index).toList());
    }

    public List<Source> sources() {
        return List.copyOf(sources);
    }

    /** The commission that was asked for; nothing where a studio was. */
    public Optional<CommissionFolder> commission() {
        return commission;
    }

    /** The commission in whose book a record stands, or that was asked for. */
    public Optional<CommissionFolder> commissionOf(Deed deed) {
        return sources.get(deed.source()).commission().or(() -> commission);
    }

    public StudioFolder studio() {
        return studio;
    }

    /** The whole record. */
    public RecordLine line(Deed deed) throws IOException {
        return sources.get(deed.source()).index().line(deed.record().ordinal());
    }

    /** What is wrong with the record files. */
    public List<Problem> problems() {
        return List.copyOf(problems);
    }

    @Override
    public void close() throws IOException {
        for (int i = opened.size() - 1; i >= 0; i--) {
            try {
                opened.get(i).close();
            } catch (IOException | RuntimeException e) {
                throw e;
            } catch (Exception e) {
                throw new IllegalStateException(e);
            }
        }
        opened.clear();
    }
}
