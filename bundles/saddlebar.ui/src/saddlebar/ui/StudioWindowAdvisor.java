package saddlebar.ui;

import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.FileDrop;
import saddlebar.ui.desk.OpenCommission;

/** The window: as large as fits, with the benches' names at the top right, and the commission's title in its own. */
final class StudioWindowAdvisor extends WorkbenchWindowAdvisor {
    private static final int USUAL_WIDTH_PT = 1400;
    private static final int USUAL_HEIGHT_PT = 900;

    StudioWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
        super(configurer);
    }

    @Override
    public void preWindowOpen() {
        IWorkbenchWindowConfigurer configurer = getWindowConfigurer();
        Rectangle screen = Display.getCurrent().getPrimaryMonitor().getClientArea();
        configurer.setInitialSize(new Point(Math.min(USUAL_WIDTH_PT, screen.width), Math.min(USUAL_HEIGHT_PT, screen.height)));
        configurer.setShowMenuBar(true);
        configurer.setShowCoolBar(true);
        configurer.setShowPerspectiveBar(true);
        configurer.setShowStatusLine(true);
        configurer.setShowProgressIndicator(true);
        configurer.addEditorAreaTransfer(FileTransfer.getInstance());
        configurer.configureEditorAreaDropListener(new FileDrop(configurer.getWindow()));
    }

    @Override
    public void postWindowOpen() {
        CommissionDesk desk = getWindowConfigurer().getWindow().getService(CommissionDesk.class);
        desk.addListener(new CommissionDesk.Listener() {
            @Override
            public void opened(OpenCommission commission) {
                title(commission);
            }

            @Override
            public void changed(OpenCommission commission) {
                title(commission);
            }

            @Override
            public void closing(OpenCommission commission) {
                getWindowConfigurer().setTitle(Messages.Studio_title);
            }
        });
        desk.commission().ifPresentOrElse(this::title, () -> getWindowConfigurer().setTitle(Messages.Studio_title));
    }

    private void title(OpenCommission commission) {
        String title = commission.isReadOnly()
                ? NLS.bind(Messages.Studio_titleReadOnly, commission.title())
                : NLS.bind(Messages.Studio_titleOf, commission.title());
        getWindowConfigurer().setTitle(title);
    }
}
