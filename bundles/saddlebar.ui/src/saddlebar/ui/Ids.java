package saddlebar.ui;

/** Names by which {@code plugin.xml} and the code know the same things; a test compares them. */
public final class Ids {
    public static final String PLUGIN = "saddlebar.ui";

    public static final String DESK_BENCH = "saddlebar.ui.bench.desk";
    public static final String DRAWING_BENCH = "saddlebar.ui.bench.drawing";
    public static final String SCREEN_BENCH = "saddlebar.ui.bench.screen";

    public static final String TREE_VIEW = "saddlebar.ui.view.commission";
    public static final String WALL_VIEW = "saddlebar.ui.view.wall";
    public static final String PIECES_VIEW = "saddlebar.ui.view.pieces";
    public static final String LAYERS_VIEW = "saddlebar.ui.view.layers";
    public static final String GLASS_VIEW = "saddlebar.ui.view.glass";
    public static final String COLOURWAYS_VIEW = "saddlebar.ui.view.colourways";
    public static final String NEXT_VIEW = "saddlebar.ui.view.next";
    public static final String DATES_VIEW = "saddlebar.ui.view.dates";
    public static final String DOTS_VIEW = "saddlebar.ui.view.dots";
    public static final String RECIPE_VIEW = "saddlebar.ui.view.recipe";
    public static final String MESH_VIEW = "saddlebar.ui.view.mesh";
    public static final String STOCK_VIEW = "saddlebar.ui.view.stock";
    public static final String DOCUMENTS_VIEW = "saddlebar.ui.view.documents";
    public static final String DOCUMENT_KIND = "saddlebar.ui.document.kind";
    public static final String TONE_VIEW = "saddlebar.ui.view.tone";
    public static final String SHEETS_VIEW = "saddlebar.ui.view.sheets";
    public static final String QUALITY_VIEW = "saddlebar.ui.view.quality";
    public static final String NARROW_VIEW = "saddlebar.ui.view.narrow";
    public static final String PROBLEMS_VIEW = "saddlebar.ui.view.problems";
    public static final String PROPERTIES_VIEW = "saddlebar.ui.view.properties";
    public static final String PROGRESS_VIEW = "org.eclipse.ui.views.ProgressView";

    public static final String EASEL_EDITOR = "saddlebar.ui.easel";
    public static final String SIDE_BY_SIDE_EDITOR = "saddlebar.ui.sideBySide";
    public static final String EASEL_CONTEXT = "saddlebar.ui.context.easel";
    public static final String EASEL_MENU = "saddlebar.ui.menu.easel";
    public static final String WELCOME_EDITOR = "saddlebar.ui.welcome";
    public static final String WINDOW_INPUT_FACTORY = "saddlebar.ui.windowInput";

    public static final String PREFERENCES = "saddlebar.ui.preferences";

    private Ids() {
    }
}
