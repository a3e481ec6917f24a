package saddlebar.production.kiln;

import java.math.BigDecimal;
import java.math.MathContext;

import saddlebar.kiln.fire.Kiln;
import saddlebar.kiln.fire.Shelf;
import saddlebar.kiln.search.KilnLearning;
import saddlebar.model.problem.Refusal;
import saddlebar.model.work.Work;

/** Learns a kiln of the studio from its own logs, and writes what was learnt into the studio. */
public final class KilnTeaching {
    private KilnTeaching() {
    }

    /** @throws Refusal if no firing of that kiln has both its schedule and its log */
    public static KilnLearning.Learnt learn(Kiln start, KilnHistory.KilnFacts facts, Work work) {
        if (facts.lessons().isEmpty()) {
            throw new Refusal("kiln " + start.name(), "none of its firings has both its schedule and its log", "attach a log to a firing of it first");
        }
        return KilnLearning.from(start, facts.lessons(), work);
    }

    /** To be called within one step of editing. */
    public static void write(KilnLearning.Learnt learnt, int firings, saddlebar.model.commission.Kiln kiln) {
        Kiln empty = learnt.kiln().withoutLoad(Shelf.USUAL);
        kiln.setChamberJPerK(rounded(empty.chamberJPerK()));
        kiln.setLiningJPerK(rounded(empty.liningJPerK()));
        kiln.setToLiningWPerK(rounded(empty.toLiningWPerK()));
        kiln.setToRoomWPerK(rounded(empty.toRoomWPerK()));
        kiln.setLearntFirings(firings);
    }

    /** Five digits: more than a log can tell. */
    private static double rounded(double value) {
        return new BigDecimal(value).round(new MathContext(5)).doubleValue();
    }

    /** Back to what the table says. To be called within one step of editing. */
    public static void forget(saddlebar.model.commission.Kiln kiln) {
        kiln.setChamberJPerK(null);
        kiln.setLiningJPerK(null);
        kiln.setToLiningWPerK(null);
        kiln.setToRoomWPerK(null);
        kiln.setLearntFirings(0);
    }
}
