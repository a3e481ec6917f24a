package saddlebar.cli;

import saddlebar.model.commission.Window;
import saddlebar.model.problem.Refusal;
import saddlebar.model.store.CommissionFolder;

/** Finds the window that a person named. */
final class WindowOf {
    private WindowOf() {
    }

    static Window named(CommissionFolder commission, String name) {
        return commission.window(name).orElseThrow(() -> new Refusal(name, "the commission has no window of this name",
                commission.windowNames().isEmpty() ? "bring artwork for it first" : "take one of " + String.join(", ", commission.windowNames())));
    }
}
