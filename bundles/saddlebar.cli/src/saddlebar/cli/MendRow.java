package saddlebar.cli;

import java.util.List;
import java.util.Locale;

import saddlebar.cartoon.mend.Mend;
import saddlebar.model.commission.AcceptedMend;
import saddlebar.production.pieces.MendChoice;

/** A mend in JSON and in words; {@code kind} is its word, {@code state} whether it is proposed or agreed to. */
record MendRow(String id, String kind, String state, String panel, String where, List<Double> at, String message) {
    static final String PROPOSED = "proposed";
    static final String AGREED = "agreed";

    static MendRow of(String panel, Mend mend) {
        return of(panel, mend, PROPOSED);
    }

    static MendRow of(String panel, Mend mend, String state) {
        return new MendRow(MendChoice.id(mend.key()), mend.kind().key(), state, panel, mend.where(), List.of(mend.at().xMm(), mend.at().yMm()), mend.message());
    }

    static MendRow of(String panel, AcceptedMend mend) {
        String kind = mend.getKey().contains(" ") ? mend.getKey().substring(0, mend.getKey().indexOf(' ')) : mend.getKey();
        return new MendRow(MendChoice.id(mend.getKey()), kind, AGREED, panel, "", List.of(mend.getXMm(), mend.getYMm()), mend.getWords());
    }

    String line() {
        return String.format(Locale.ROOT, "  %s  %-8s  %s%s at %.1f, %.1f mm: %s", id, state, panel.isEmpty() ? "" : panel + " ",
                where.isEmpty() ? kind : where,
                at.get(0), at.get(1), message);
    }
}
