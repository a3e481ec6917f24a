package saddlebar.ui.kiln;

/** Names by which {@code plugin.xml} and the code know the same things; a test compares them. */
public final class KilnIds {
    public static final String PLUGIN = "saddlebar.ui.kiln";
    public static final String BENCH = "saddlebar.ui.bench.kiln";
    public static final String CHART_VIEW = "saddlebar.ui.view.kilnChart";
    public static final String SCHEDULE_VIEW = "saddlebar.ui.view.schedule";
    public static final String SHELF_VIEW = "saddlebar.ui.view.shelf";
    public static final String FIRINGS_VIEW = "saddlebar.ui.view.firings";

    private KilnIds() {
    }
}
