package saddlebar.ui;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Platform;
import org.eclipse.core.runtime.Status;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchAdvisor;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.CommissionOpening;
import saddlebar.ui.desk.StartArgument;

/** Sets the studio up: which bench comes first, and which commission lies on it. */
public class StudioAdvisor extends WorkbenchAdvisor {
    @Override
    public void initialize(IWorkbenchConfigurer configurer) {
        super.initialize(configurer);
        configurer.setSaveAndRestore(true);
        PlatformUI.getPreferenceStore().setDefault("SHOW_PROGRESS_ON_STARTUP", false);
    }

    @Override
    public WorkbenchWindowAdvisor createWorkbenchWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
        return new StudioWindowAdvisor(configurer);
    }

    @Override
    public String getInitialWindowPerspectiveId() {
        return Ids.DESK_BENCH;
    }

    @Override
    public String getMainPreferencePageId() {
        return Ids.PREFERENCES;
    }

    @Override
    public void postStartup() {
        IWorkbench workbench = getWorkbenchConfigurer().getWorkbench();
        IWorkbenchWindow window = workbench.getActiveWorkbenchWindow();
        if (window != null) {
            new CommissionOpening(window).atStart(startArgument());
        }
    }

    /** The commission named at the start, if any; a test names its own. */
    protected Optional<Path> startArgument() {
        return StartArgument.commission(List.of(Platform.getApplicationArgs()));
    }

    @Override
    public void eventLoopException(Throwable fault) {
        ILog.of(StudioAdvisor.class).log(new Status(IStatus.ERROR, Ids.PLUGIN, Messages.Studio_ownFault, fault));
    }

    @Override
    public void postShutdown() {
        CommissionDesk desk = getWorkbenchConfigurer().getWorkbench().getService(CommissionDesk.class);
        if (desk != null) {
            try {
                desk.close();
            } catch (java.io.IOException e) { // the lock goes with the process
                ILog.of(StudioAdvisor.class).warn(e.getMessage(), e);
            }
        }
        super.postShutdown();
    }
}
