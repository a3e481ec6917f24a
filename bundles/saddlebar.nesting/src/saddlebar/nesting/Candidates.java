package saddlebar.nesting;

import java.util.List;
import java.util.function.Consumer;

/** Hands on what a search has found, but only after the check; what fails the check is not shown to anybody. */
final class Candidates {
    private final List<NestItem> items;
    private final double gapMm;
    private final Consumer<? super Nested> listener;
    private final double itemsAreaMm2;
    private Nested best;

    Candidates(List<NestItem> items, double gapMm, Consumer<? super Nested> listener) {
        this.items = items;
        this.gapMm = gapMm;
        this.listener = listener;
        itemsAreaMm2 = items.stream().mapToDouble(i -> i.areaMm2() * i.quantity()).sum();
    }

    void offer(List<Placement> placements, List<SheetArea> areas, double lengthMm, String method) {
        if (LayoutCheck.holds(items, areas, gapMm, placements)) {
            double area = areas.stream().mapToDouble(SheetArea::areaMm2).sum();
            best = new Nested(placements, areas.size(), lengthMm, itemsAreaMm2 / area, true, method, areas);
            listener.accept(best);
        }
    }

    Nested best() {
        if (best == null) {
            throw new IllegalStateException("no layout that a search found has passed the check");
        }
        return best;
    }
}
