package saddlebar.ui.properties;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.ui.IWorkbenchPart;
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
        return adapter.cast(new TabbedPropertySheetPage(contributor) {
            @Override
            public void selectionChanged(IWorkbenchPart from, ISelection selection) {
                super.selectionChanged(from, told(selection));
            }
        });
    }

    /** One thing as it is; none or several as one, so that the page has words for them in our languages. */
    private static ISelection told(ISelection selection) {
        List<Object> things = new ArrayList<>();
        if (selection instanceof IStructuredSelection structured) {
            structured.forEach(things::add);
        }
        return things.size() == 1 ? selection : new StructuredSelection(new ChosenThings(things));
    }
}
