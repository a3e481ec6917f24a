package saddlebar.ui.make;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.ui.IWorkbenchWindow;

import saddlebar.model.commission.ArtworkReference;
import saddlebar.model.problem.Refusal;
import saddlebar.production.bring.ArtLook;
import saddlebar.ui.Messages;
import saddlebar.ui.StudioPreferences;
import saddlebar.ui.TypedLength;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.CommissionOpening;
import saddlebar.ui.desk.OpenCommission;
import saddlebar.ui.desk.SavingCommission;
import saddlebar.ui.problems.ProblemBoard;

/** Brings a drawing into the open commission, as the person asks for it: by the menu, or by dropping its file. */
public final class BringingArtwork {
    private static final String SOURCE = "bring";
    private static final String[] KINDS = {"*.svg;*.pdf;*.png;*.jpg;*.jpeg;*.tif;*.tiff", "*.*"};

    private final IWorkbenchWindow window;
    private final CommissionDesk desk;

    public BringingArtwork(IWorkbenchWindow window) {
        this.window = window;
        this.desk = window.getService(CommissionDesk.class);
    }

    /** Asks for a file. */
    public void choose() {
        FileDialog dialog = new FileDialog(window.getShell(), SWT.OPEN);
        dialog.setText(Messages.Bring_title);
        dialog.setFilterExtensions(KINDS);
        dialog.setFilterNames(new String[] {Messages.Bring_kinds, Messages.Bring_allFiles});
        String chosen = dialog.open();
        if (chosen != null) {
            bring(Path.of(chosen));
        }
    }

    /** Asks where the drawing belongs, then brings it in the background and puts its window on the Easel. */
    public void bring(Path art) {
        Bringer bringer = window.getService(Bringer.class);
        Optional<OpenCommission> commission = desk.commission();
        if (bringer == null || commission.isEmpty() || !desk.canEdit()) {
            MessageDialog.openInformation(window.getShell(), Messages.Bring_title, Messages.Bring_openFirst);
            return;
        }
        BringDialog dialog = new BringDialog(window.getShell(), art, commission.get().windowNames(), new TypedLength(StudioPreferences.unit()),
                (name, page, done, refused) -> look(bringer, art, lastOf(commission.get(), name), page, done, refused));
        if (dialog.open() != Window.OK || dialog.choice() == null) {
            return;
        }
        BringChoice choice = dialog.choice();
        if (commission.get().isDirty() && !new SavingCommission(window.getShell()).save(commission.get())) {
            return;
        }
        HandedOverJob<Bringer.Result> job = new HandedOverJob<>(NLS.bind(Messages.Bring_job, art.getFileName()), desk, window.getShell().getDisplay(),
                Bringer.WORK_UNITS, (path, work) -> bringer.bring(path, choice, work), this::show);
        try {
            job.begin();
        } catch (IOException e) {
            MessageDialog.openError(window.getShell(), Messages.Bring_title, e.getMessage());
        }
    }

    /** A copy of the last artwork of a window's panel, for whoever reads it on another thread. */
    private static Optional<ArtworkReference> lastOf(OpenCommission commission, String windowName) {
        return commission.window(windowName).flatMap(known -> known.getPanels().stream().findFirst())
                .flatMap(panel -> panel.getArtwork().stream().max(Comparator.comparingInt(ArtworkReference::getRevision))).map(EcoreUtil::copy);
    }

    private void look(Bringer bringer, Path art, Optional<ArtworkReference> last, int page, Consumer<ArtLook> done, Consumer<String> refused) {
        Display display = window.getShell().getDisplay();
        Job job = Job.create(NLS.bind(Messages.Bring_lookJob, art.getFileName()), monitor -> {
            try {
                ArtLook look = bringer.look(art, last, page, BringDialog.PREVIEW_PX);
                display.asyncExec(() -> done.accept(look));
            } catch (Refusal | IOException e) {
                display.asyncExec(() -> refused.accept(e.getMessage()));
            }
        });
        job.setUser(false);
        job.schedule();
    }

    private void show(Bringer.Result result) {
        desk.commission().ifPresent(commission -> {
            new CommissionOpening(window).showWindow(commission, result.windowName());
            window.getService(ProblemBoard.class).put(SOURCE, ProblemBoard.of(result.windowName(), result.problems()));
        });
    }
}
