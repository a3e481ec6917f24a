package saddlebar.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ServiceScope;

import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import saddlebar.cartoon.mend.Mend;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.Refusal;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.work.Work;
import saddlebar.production.facts.CommissionFacts.PlacedPanel;
import saddlebar.production.facts.FactsReader;
import saddlebar.production.make.Making;
import saddlebar.production.pieces.MendChoice;

/** What could be mended in cutlines, and agreeing to it. */
@Component(service = BenchCommand.class, scope = ServiceScope.PROTOTYPE)
@Command(name = "mend", sortOptions = false,
        description = "Lists what could be mended in the cutlines of a commission; with --accept it is done each time pieces are made. The artwork is not changed.",
        footer = {"", "Example: saddlebar mend chapel-door W01 --accept all"})
public final class MendCommand implements BenchCommand {
    private static final String ALL = "all";

    private final Making making;

    @Parameters(index = "0", paramLabel = "C", description = "Folder of the commission.")
    private Path folder;

    @Parameters(index = "1", arity = "0..1", paramLabel = "WINDOW", description = "Only this window.")
    private String window;

    @ArgGroup(exclusive = true)
    private Deed deed;

    @Mixin
    private CommonOptions common;

    /** One thing at a time. */
    static final class Deed {
        @Option(names = "--accept", paramLabel = "ID,...", split = ",", description = "Agree to these proposals, or to all, and to what can be mended then.")
        private List<String> accept;

        @Option(names = "--take-back", paramLabel = "ID,...", split = ",", description = "No longer agree to these, or to all.")
        private List<String> takeBack;
    }

    @Activate
    public MendCommand(@Reference Making making) {
        this.making = making;
    }

    /** The JSON document. */
    record Answer(List<MendRow> mends) {
    }

    @Override
    public Integer call() throws IOException {
        boolean writes = deed != null;
        try (CommissionFolder commission = CommissionFolder.open(folder, writes ? Access.WRITE : Access.READ)) {
            Work work = common.work(1);
            List<PlacedPanel> panels = panels(commission);
            if (writes) {
                if (deed.accept != null) {
                    accept(commission, panels, work);
                } else {
                    takeBack(commission, panels);
                }
                commission.save();
                panels = panels(commission);
            }
            List<MendRow> rows = new ArrayList<>();
            for (PlacedPanel panel : panels) {
                model(commission, panel).getMendings().forEach(mend -> rows.add(MendRow.of(panel.label(), mend)));
                making.mends(panel, work).forEach(mend -> rows.add(MendRow.of(panel.label(), mend)));
            }
            common.answer(new Answer(rows), words(rows));
            return rows.stream().anyMatch(row -> row.state().equals(MendRow.PROPOSED)) ? ATTENTION : DONE;
        }
    }

    private List<PlacedPanel> panels(CommissionFolder commission) {
        return FactsReader.read(commission.commission(), commission.path(), window == null ? List.of() : List.of(window)).panels()
                .filter(panel -> panel.panel().art().isPresent() && !panel.panel().cutlineLayer().isEmpty()).toList();
    }

    private static Panel model(CommissionFolder commission, PlacedPanel panel) {
        Window window = commission.window(panel.window().name()).orElseThrow();
        return window.getPanels().stream().filter(one -> panel.panel().id().equals(one.getId())).findFirst().orElseThrow();
    }

    private void accept(CommissionFolder commission, List<PlacedPanel> panels, Work work) throws IOException {
        List<String> ids = new ArrayList<>(deed.accept.stream().map(id -> id.strip().toLowerCase(Locale.ROOT)).toList());
        boolean all = ids.equals(List.of(ALL));
        for (PlacedPanel panel : panels) {
            List<Mend> proposals = all ? making.allMends(panel, work) : making.mends(panel, work);
            List<Mend> chosen = all ? proposals : proposals.stream().filter(mend -> ids.remove(MendChoice.id(mend.key()))).toList();
            MendChoice.accept(model(commission, panel), chosen);
        }
        refuseUnknown(ids, all);
    }

    private void takeBack(CommissionFolder commission, List<PlacedPanel> panels) {
        List<String> ids = new ArrayList<>(deed.takeBack.stream().map(id -> id.strip().toLowerCase(Locale.ROOT)).toList());
        boolean all = ids.equals(List.of(ALL));
        for (PlacedPanel panel : panels) {
            model(commission, panel).getMendings().removeIf(mend -> all || ids.remove(MendChoice.id(mend.getKey())));
        }
        refuseUnknown(ids, all);
    }

    /** Before anything is saved. */
    private static void refuseUnknown(List<String> left, boolean all) {
        if (!all && !left.isEmpty()) {
            throw new Refusal(left.get(0), "no mend has this id", "list them with saddlebar mend, then give ids of that list, or all");
        }
    }

    private static List<String> words(List<MendRow> rows) {
        List<String> words = new ArrayList<>();
        long proposed = rows.stream().filter(row -> row.state().equals(MendRow.PROPOSED)).count();
        words.add(rows.isEmpty() ? "Nothing to mend." : proposed + " proposed, " + (rows.size() - proposed) + " agreed to and done when pieces are made");
        rows.forEach(row -> words.add(row.line()));
        return words;
    }
}
