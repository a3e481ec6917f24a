package saddlebar.production.pieces;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

import saddlebar.cartoon.mend.Mend;
import saddlebar.model.commission.AcceptedMend;
import saddlebar.model.commission.CommissionFactory;
import saddlebar.model.commission.Panel;
import saddlebar.model.file.Hashes;
import saddlebar.model.problem.Refusal;

/** Agreeing to mends, and taking that back. What is agreed to stands in the commission, over the artwork, which nobody changes. */
public final class MendChoice {
    private static final int ID_LETTERS = 6;

    private MendChoice() {
    }

    /** A short name for a mend, the same as long as kind, element and place are. */
    public static String id(String key) {
        return Hashes.sha256(key.getBytes(StandardCharsets.UTF_8)).substring(0, ID_LETTERS);
    }

    /** As the model keeps it; not in a panel yet. */
    public static AcceptedMend accepted(Mend mend) {
        AcceptedMend accepted = CommissionFactory.eINSTANCE.createAcceptedMend();
        accepted.setKey(mend.key());
        accepted.setWords(mend.message());
        accepted.setXMm(mend.at().xMm());
        accepted.setYMm(mend.at().yMm());
        return accepted;
    }

    public static void accept(Panel panel, Collection<Mend> mends) {
        mends.forEach(mend -> panel.getMendings().add(accepted(mend)));
    }

    /** @throws Refusal naming the first id that no proposal has */
    public static List<Mend> chosen(List<Mend> proposals, List<String> ids) {
        List<Mend> chosen = new ArrayList<>();
        for (String id : ids) {
            chosen.add(proposals.stream().filter(mend -> id(mend.key()).equals(id)).findFirst()
                    .orElseThrow(() -> noSuch(id, proposals.stream().map(mend -> id(mend.key())).toList())));
        }
        return chosen;
    }

    private static Refusal noSuch(String id, List<String> known) {
        return new Refusal(id, "no mend has this id", known.isEmpty() ? "there is none to choose" : "take all, or some of " + String.join(", ", known));
    }
}
