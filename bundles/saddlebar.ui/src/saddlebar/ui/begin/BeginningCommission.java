package saddlebar.ui.begin;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.IWorkbenchWindow;

import saddlebar.model.commission.UnitSystem;
import saddlebar.model.problem.Refusal;
import saddlebar.model.store.CommissionFolder;
import saddlebar.model.store.StudioLibrary;
import saddlebar.ui.Messages;
import saddlebar.ui.StudioPreferences;
import saddlebar.ui.desk.CommissionOpening;
import saddlebar.ui.desk.RecentCommissions;
import saddlebar.ui.easel.RulerScale;

/** Begins a commission as the person asks for it: chosen in a dialog, made on the disk, opened. */
public final class BeginningCommission {
    private final IWorkbenchWindow window;

    public BeginningCommission(IWorkbenchWindow window) {
        this.window = window;
    }

    /** Asks, makes, opens. */
    public void choose() {
        CommissionOpening opening = new CommissionOpening(window);
        if (!opening.mayClose()) {
            return;
        }
        Optional<StudioLibrary> tables = tables();
        UnitSystem units = StudioPreferences.unit() == RulerScale.Unit.INCH ? UnitSystem.INCH : UnitSystem.MM;
        NewDialog dialog = new NewDialog(window.getShell(), usualPlace(), units, tables.isPresent());
        if (dialog.open() == Window.OK && dialog.choice().isPresent() && make(dialog.choice().get(), tables)) {
            opening.openInstead(dialog.choice().get().folder());
        }
    }

    private static Optional<StudioLibrary> tables() {
        try {
            return StudioLibrary.installed();
        } catch (IOException | Refusal e) {
            ILog.of(BeginningCommission.class).warn(e.getMessage(), e);
            return Optional.empty(); // a studio can be stocked later
        }
    }

    /** Beside the commission opened last; without one, in the person's own folder. */
    private static Path usualPlace() {
        return new RecentCommissions(StudioPreferences.store()).all().stream().findFirst().map(Path::getParent)
                .orElseGet(() -> Path.of(System.getProperty("user.home")));
    }

    private boolean make(NewChoice choice, Optional<StudioLibrary> tables) {
        try {
            window.getWorkbench().getProgressService().busyCursorWhile(monitor -> {
                monitor.beginTask(NLS.bind(Messages.New_making, choice.title()), 1);
                try {
                    CommissionFolder.create(choice.folder(), choice.settings(tables)).close();
                } catch (IOException e) {
                    throw new InvocationTargetException(e);
                } finally {
                    monitor.done();
                }
            });
            return true;
        } catch (InvocationTargetException e) {
            Throwable why = e.getCause();
            if (!(why instanceof IOException || why instanceof Refusal)) {
                throw new IllegalStateException(why);
            }
            MessageDialog.openError(window.getShell(), Messages.New_title, NLS.bind(Messages.New_failed, why.getMessage()));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return false;
    }
}
