package saddlebar.ui.properties;

import org.eclipse.ui.views.properties.IPropertySheetPage;
import org.eclipse.ui.views.properties.tabbed.ITabbedPropertySheetPageContributor;
import org.eclipse.ui.views.properties.tabbed.TabbedPropertySheetPage;

/** The tabbed page that our parts give to the Properties view. */
public final class PropertiesPage {
    /** As {@code plugin.xml} names the contributor. */
    public static final String CONTRIBUTOR = "saddlebar.ui.properties";

    private PropertiesPage() {
    }

    /** A page if that is what is asked for, else null, as adapters say it. */
    public static <T> T adapt(Class<T> adapter, Object part) {
        if (adapter != IPropertySheetPage.class) {
            return null;
        }
        ITabbedPropertySheetPageContributor contributor = () -> CONTRIBUTOR;
        return adapter.cast(new TabbedPropertySheetPage(contributor));
    }
}
