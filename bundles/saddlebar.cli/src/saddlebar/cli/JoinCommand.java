package saddlebar.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.ServiceScope;

import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.JoinKind;
import saddlebar.model.commission.JoinRule;
import saddlebar.model.commission.JoinStock;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.problem.Refusal;
import saddlebar.model.store.Access;
import saddlebar.model.store.CommissionFolder;
import saddlebar.production.pieces.PieceMarks;

/** What lies between the pieces of a panel, where it is not the same everywhere, and what comes off at its outer edge. */
@Component(service = BenchCommand.class, scope = ServiceScope.PROTOTYPE)
@Command(name = "join", sortOptions = false,
        description = "Joins parts of a panel otherwise than the rest: along the lines of an artwork layer, between two pieces, or round one. Without a choice, tells the rules.",
        footer = {"", "Example: saddlebar join chapel-door W01 --between 3,7 --lead --gap-mm 1.8"})
public final class JoinCommand implements BenchCommand {
    @Parameters(index = "0", paramLabel = "C", description = "Folder of the commission.")
    private Path folder;

    @Parameters(index = "1", paramLabel = "WINDOW", description = "Name of the window, such as W01.")
    private String windowName;

    @Option(names = "--panel", paramLabel = "P", description = "Panel of a window that has several.")
    private String panelName;

    @ArgGroup(exclusive = true)
    private Where where;

    @ArgGroup(exclusive = true)
    private How how;

    @Option(names = "--gap-mm", paramLabel = "G", description = "Gap between two glasses, all in; as the foil or came needs if not given.")
    private Double gapMm;

    @Option(names = "--stock", paramLabel = "NAME", description = "Foil or came section of the studio.")
    private String stock;

    @Option(names = "--edge-mm", paramLabel = "E", description = "What comes off the glass at the panel's outer edge, 0 to 20 mm.")
    private Double edgeMm;

    @Option(names = "--outline", paramLabel = "ID",
            description = "The drawn element that is the panel's outer edge; an empty name: the outer edge of all pieces.")
    private String outline;

    @Option(names = "--clear", description = "First take all rules of the panel away.")
    private boolean clear;

    @Mixin
    private CommonOptions common;

    /** One place. */
    static final class Where {
        @Option(names = "--layer", paramLabel = "NAME", description = "Along the lines of this layer of the artwork; they are cutlines too.")
        private String layer;

        @Option(names = "--between", paramLabel = "A,B", split = ",", description = "Between these two pieces.")
        private List<String> between;

        @Option(names = "--round", paramLabel = "A", description = "At all joints of this piece.")
        private String round;
    }

    /** One way. */
    static final class How {
        @Option(names = "--foil", description = "Copper foil.")
        private boolean foil;

        @Option(names = "--lead", description = "Lead came.")
        private boolean lead;
    }

    /** The JSON document. */
    record Answer(String window, double edgeMm, String outline, List<Rule> rules) {
    }

    /** A rule as it stands; second is null where it holds for all joints of first. */
    record Rule(String layer, Integer first, Integer second, String join, Double gapMm, String stock) {
    }

    @Override
    public Integer call() throws IOException {
        if ((where == null) != (how == null)) {
            throw common.wrong("Say where (--layer, --between or --round) and how (--foil or --lead).");
        }
        if (where == null && (gapMm != null || stock != null)) {
            throw common.wrong("--gap-mm and --stock belong to a rule: say where and how.");
        }
        if (gapMm != null && !(gapMm >= 0 && gapMm <= 20) || edgeMm != null && !(edgeMm >= 0 && edgeMm <= 20)) {
            throw common.wrong("A gap or an edge is 0 to 20 mm.");
        }
        boolean changes = where != null || edgeMm != null || outline != null || clear;
        try (CommissionFolder commission = CommissionFolder.open(folder, changes ? Access.WRITE : Access.READ)) {
            List<Panel> panels = NumberCommand.panels(WindowOf.named(commission, windowName), panelName);
            if (panels.size() > 1) {
                throw new Refusal(windowName, "it has several panels", "name the one meant with --panel");
            }
            Panel panel = panels.get(0);
            if (clear) {
                panel.getJoinRules().clear();
            }
            if (where != null) {
                panel.getJoinRules().add(rule(commission, panel));
            }
            if (edgeMm != null) {
                panel.setEdgeAllowanceMm(edgeMm);
            }
            if (outline != null) {
                panel.setOutlineElement(outline.isBlank() ? null : outline.strip());
            }
            if (changes) {
                commission.save();
            }
            Answer answer = new Answer(windowName, panel.getEdgeAllowanceMm() == null ? 0 : panel.getEdgeAllowanceMm(), panel.getOutlineElement(),
                    panel.getJoinRules().stream().map(JoinCommand::row).toList());
            common.answer(answer, words(answer));
            return DONE;
        }
    }

    private JoinRule rule(CommissionFolder commission, Panel panel) {
        JoinRule rule = CommissionFactory.eINSTANCE.createJoinRule();
        rule.setJoin(how.lead ? JoinKind.LEAD : JoinKind.FOIL);
        rule.setGapMm(gapMm);
        if (stock != null) {
            rule.setJoinStock(stock(commission, rule.getJoin()));
        }
        if (where.layer != null) {
            rule.setArtLayer(where.layer.strip());
            return rule;
        }
        List<String> named = where.round != null ? List.of(where.round) : where.between;
        if (named.size() != (where.round != null ? 1 : 2)) {
            throw common.wrong("--between takes two pieces, such as 3,7.");
        }
        List<Piece> pieces = new ArrayList<>();
        named.forEach(word -> pieces.addAll(PieceMarks.pieces(List.of(panel), List.of(word)).subList(0, 1)));
        rule.setFirst(pieces.get(0));
        if (pieces.size() > 1) {
            if (!pieces.get(0).getNeighbours().contains(pieces.get(1))) {
                throw new Refusal("pieces " + String.join(", ", named), "they have no joint with each other", "name two pieces that lie side by side");
            }
            rule.setSecond(pieces.get(1));
        }
        return rule;
    }

    private JoinStock stock(CommissionFolder commission, JoinKind kind) {
        List<JoinStock> fitting = commission.studio().getJoins().stream().filter(one -> one.getKind() == kind).toList();
        return fitting.stream().filter(one -> stock.equalsIgnoreCase(one.getName())).findFirst()
                .orElseThrow(() -> new Refusal(stock, "the studio has no " + kind.getLiteral() + " of this name",
                        "take one of " + String.join(", ", fitting.stream().map(JoinStock::getName).toList())));
    }

    private static Rule row(JoinRule rule) {
        return new Rule(rule.getArtLayer(), rule.getFirst() == null ? null : rule.getFirst().getNumber(), rule.getSecond() == null
                ? null
                : rule.getSecond().getNumber(), rule.getJoin().getLiteral(), rule.getGapMm(),
                rule.getJoinStock() == null ? null : rule.getJoinStock().getName());
    }

    private static List<String> words(Answer answer) {
        List<String> words = new ArrayList<>();
        words.add(String.format(Locale.ROOT, "%s: %.1f mm come off at the outer edge%s; %s", answer.window(), answer.edgeMm(), answer.outline() == null
                ? ""
                : ", which is the element " + answer.outline(), answer.rules().isEmpty() ? "one join everywhere" : "rules, the later before the earlier:"));
        for (Rule rule : answer.rules()) {
            String place = rule.layer() != null && rule.first() == null
                    ? "along layer " + rule.layer()
                    : rule.second() == null ? "at all joints of piece " + rule.first() : "between pieces " + rule.first() + " and " + rule.second();
            words.add("  " + place + ": " + rule.join() + (rule.stock() == null ? "" : " " + rule.stock()) + (rule.gapMm() == null
                    ? ""
                    : String.format(Locale.ROOT, ", gap %.2f mm", rule.gapMm())));
        }
        return words;
    }
}
