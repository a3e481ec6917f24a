package saddlebar.production.facts;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

import saddlebar.cartoon.CutLimits;
import saddlebar.cartoon.Join;
import saddlebar.model.commission.GlassStock;
import saddlebar.model.commission.JoinKind;
import saddlebar.model.commission.JoinRule;
import saddlebar.model.commission.JoinStock;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.units.Require;

/**
 * How the cutline of a panel is read, beside its usual join.
 *
 * @param mends           mends that a person agreed to, in the order in which they did
 * @param edgeAllowanceMm comes off the glass at the outer edge
 * @param outlineElement  the drawn element that is the outer edge; empty: the outer edge of all pieces
 * @param joins           joins that hold in parts of the panel
 * @param limits          what is hard to cut, by the number of a piece whose glass has limits of its own
 * @param locked          numbers of locked pieces
 */
public record CutFacts(List<AgreedMend> mends, double edgeAllowanceMm, Optional<String> outlineElement, List<PartJoin> joins,
        SortedMap<Integer, CutLimits> limits, SortedSet<Integer> locked) {
    /** As drawn, one join, common practice. */
    public static final CutFacts PLAIN = new CutFacts(List.of(), 0, Optional.empty(), List.of(), Collections.emptySortedMap(),
            Collections.emptySortedSet());
    /** Between foiled glasses, all in, where neither foil nor gap is given. */
    private static final double USUAL_CLEARANCE_MM = 0.7;

    /** A mend by the key under which it is proposed, with its words and its place. */
    public record AgreedMend(String key, String words, double xMm, double yMm) {
        public AgreedMend {
            Require.text("key", key);
            Objects.requireNonNull(words, "words");
        }
    }

    /**
     * A join that holds in a part of the panel.
     *
     * @param artLayer the artwork's layer whose lines are joined so, empty where pieces are named
     * @param first    number of a piece, 0 where a layer is named
     * @param second   of its neighbour, 0 for all
     */
    public record PartJoin(Join join, String artLayer, int first, int second) {
        public PartJoin {
            Objects.requireNonNull(join, "join");
            Objects.requireNonNull(artLayer, "artLayer");
        }
    }

    public CutFacts {
        mends = List.copyOf(mends);
        Require.within("edgeAllowanceMm", edgeAllowanceMm, 0, 20);
        Objects.requireNonNull(outlineElement, "outlineElement");
        joins = List.copyOf(joins);
        limits = Collections.unmodifiableSortedMap(new TreeMap<>(limits));
        locked = Collections.unmodifiableSortedSet(new TreeSet<>(locked));
    }

    /** As the model holds it. A rule that names a retired piece, or nothing, holds nowhere. */
    public static CutFacts of(Panel panel) {
        List<AgreedMend> mends = panel.getMendings().stream().filter(mend -> mend.getKey() != null && !mend.getKey().isBlank())
                .map(mend -> new AgreedMend(mend.getKey(), mend.getWords() == null ? "" : mend.getWords(), mend.getXMm(), mend.getYMm())).toList();
        double allowance = panel.getEdgeAllowanceMm() == null ? 0 : panel.getEdgeAllowanceMm();
        Optional<String> outline = Optional.ofNullable(panel.getOutlineElement()).filter(element -> !element.isBlank());
        List<PartJoin> joins = new ArrayList<>();
        panel.getJoinRules().forEach(rule -> partJoin(rule).ifPresent(joins::add));
        SortedMap<Integer, CutLimits> limits = new TreeMap<>();
        SortedSet<Integer> locked = new TreeSet<>();
        for (Piece piece : panel.getPieces()) {
            if (!piece.isRetired() && piece.getNumber() > 0) {
                PieceFacts.glassOf(piece).flatMap(CutFacts::limitsOf).ifPresent(own -> limits.put(piece.getNumber(), own));
                if (piece.isLocked()) {
                    locked.add(piece.getNumber());
                }
            }
        }
        return new CutFacts(mends, allowance, outline, joins, limits, locked);
    }

    private static Optional<PartJoin> partJoin(JoinRule rule) {
        String layer = rule.getArtLayer() == null ? "" : rule.getArtLayer();
        Piece first = rule.getFirst();
        Piece second = rule.getSecond();
        boolean gone = first != null && first.isRetired() || second != null && second.isRetired();
        if (gone || first == null && layer.isBlank()) {
            return Optional.empty();
        }
        Join join = joinOf(rule.getJoin(), rule.getJoinStock(), rule.getGapMm());
        return Optional.of(new PartJoin(join, first == null ? layer : "", first == null ? 0 : first.getNumber(), second == null ? 0 : second.getNumber()));
    }

    private static Join joinOf(JoinKind kind, JoinStock stock, Double gapMm) {
        if (gapMm != null) {
            return kind == JoinKind.LEAD ? Join.came(gapMm) : Join.gap(gapMm);
        }
        if (kind == JoinKind.LEAD) {
            return Join.came(stock != null && stock.getHeartMm() > 0 ? stock.getHeartMm() : 1.7);
        }
        return stock != null && stock.getThicknessUm() > 0 ? Join.foil(stock.getThicknessUm() / 1000, USUAL_CLEARANCE_MM) : Join.gap(Join.DEFAULT_GAP_MM);
    }

    /** Limits of a glass; empty if it has none of its own. What it does not say is common practice. */
    public static Optional<CutLimits> limitsOf(GlassStock glass) {
        if (glass.getNarrowMm() == null && glass.getNeedleDeg() == null && glass.getInsideCurve() == null && glass.getInsideRadiusMm() == null) {
            return Optional.empty();
        }
        CutLimits usual = CutLimits.commonPractice();
        double narrow = glass.getNarrowMm() == null ? usual.narrowMm() : glass.getNarrowMm();
        double needle = glass.getNeedleDeg() == null ? usual.needleDeg() : glass.getNeedleDeg();
        double inside = glass.getInsideCurve() == null ? usual.insideCurve() : glass.getInsideCurve();
        double radius = glass.getInsideRadiusMm() == null ? usual.insideRadiusMm() : glass.getInsideRadiusMm();
        return Optional.of(usual.withNarrow(narrow).withNeedle(needle, Math.min(needle, usual.hardNeedleDeg())).withInsideCurve(inside,
                Math.max(inside, usual.hardInsideCurve()), radius));
    }
}
