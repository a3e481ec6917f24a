package saddlebar.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.ServiceScope;

import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import saddlebar.model.commission.Piece;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.production.pieces.PieceMarks;

/** Groups, locks and notes of pieces. */
@Component(service = BenchCommand.class, scope = ServiceScope.PROTOTYPE)
@Command(name = "mark", sortOptions = false,
        description = "Groups, locks or notes pieces. A locked piece keeps number and glass whatever is done to many.",
        footer = {"", "Example: saddlebar mark chapel-door W01 3,5-9 --group sky --lock"})
public final class MarkCommand implements BenchCommand {
    @Parameters(index = "0", paramLabel = "C", description = "Folder of the commission.")
    private Path folder;

    @Parameters(index = "1", paramLabel = "WINDOW", description = "Name of the window, such as W01.")
    private String windowName;

    @Parameters(index = "2", paramLabel = "PIECES", split = ",", description = "Numbers, ranges and groups, such as 3,5-9,sky.")
    private List<String> pieces;

    @Option(names = "--panel", paramLabel = "P", description = "Panel of a window that has several.")
    private String panelName;

    @ArgGroup(exclusive = true)
    private Lock lock;

    @Option(names = "--group", paramLabel = "NAME", description = "Count them to this group; an empty name takes them out of theirs.")
    private String group;

    @Option(names = "--note", paramLabel = "TEXT", description = "Note this at each of them; an empty text takes the note away.")
    private String note;

    @Mixin
    private CommonOptions common;

    /** One or the other. */
    static final class Lock {
        @Option(names = "--lock", description = "Lock them.")
        private boolean lock;

        @Option(names = "--unlock", description = "Unlock them.")
        private boolean unlock;
    }

    /** The JSON document. */
    record Answer(String window, List<Row> pieces) {
    }

    /** A piece as it is marked now. */
    record Row(String panel, int number, boolean locked, String group, String note) {
    }

    @Override
    public Integer call() throws IOException {
        boolean changes = lock != null || group != null || note != null;
        try (CommissionFolder commission = CommissionFolder.open(folder, changes ? Access.WRITE : Access.READ)) {
            List<Piece> found = PieceMarks.pieces(NumberCommand.panels(WindowOf.named(commission, windowName), panelName), pieces);
            String named = group == null ? null : PieceMarks.group(group);
            for (Piece piece : found) {
                if (lock != null) {
                    piece.setLocked(lock.lock);
                }
                if (group != null) {
                    piece.setGroup(named);
                }
                if (note != null) {
                    piece.setNote(note.isBlank() ? null : note.strip());
                }
            }
            if (changes) {
                commission.save();
            }
            List<Row> rows = found.stream().map(piece -> new Row(piece.getPanel().getName() == null ? "" : piece.getPanel().getName(), piece.getNumber(),
                    piece.isLocked(), piece.getGroup(), piece.getNote())).toList();
            common.answer(new Answer(windowName, rows), words(rows));
            return DONE;
        }
    }

    private static List<String> words(List<Row> rows) {
        List<String> words = new ArrayList<>();
        rows.forEach(row -> words.add(String.format("%4d  %s%s%s", row.number(), row.locked() ? "locked  " : "", row.group() == null
                ? ""
                : "group " + row.group() + "  ", row.note() == null ? "" : row.note()).stripTrailing()));
        return words;
    }
}
