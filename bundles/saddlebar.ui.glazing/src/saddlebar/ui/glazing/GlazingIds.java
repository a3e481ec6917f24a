package saddlebar.ui.glazing;

/** Names by which {@code plugin.xml} and the code know the same things; a test compares them. */
public final class GlazingIds {
    public static final String PLUGIN = "saddlebar.ui.glazing";
    public static final String BENCH = "saddlebar.ui.bench.glazing";
    public static final String METAL_VIEW = "saddlebar.ui.view.metal";
    public static final String BARS_VIEW = "saddlebar.ui.view.bars";
    public static final String MONEY_VIEW = "saddlebar.ui.view.money";

    private GlazingIds() {
    }
}
