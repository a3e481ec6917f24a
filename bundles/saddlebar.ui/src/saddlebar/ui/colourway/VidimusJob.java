package saddlebar.ui.colourway;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CancellationException;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Shell;

import saddlebar.model.problem.Refusal;
import saddlebar.production.colourway.Vidimus;
import saddlebar.production.colourway.VidimusOrder;
import saddlebar.production.colourway.VidimusWords;
import saddlebar.ui.Ids;
import saddlebar.ui.make.MonitorWork;

/** Paints a vidimus and writes it, in the background. */
final class VidimusJob extends Job {
    private final VidimusOrder order;
    private final Path file;
    private final Shell shell;

    VidimusJob(VidimusOrder order, Path file, Shell shell) {
        super(NLS.bind(ColourWords.Picture_job, file.getFileName()));
        this.order = order;
        this.file = file;
        this.shell = shell;
        setUser(true);
    }

    private static VidimusWords words() {
        return new VidimusWords(ColourWords.Vidimus_colourway, ColourWords.Vidimus_approved, ColourWords.Vidimus_notApproved,
                List.of(ColourWords.Light_north, ColourWords.Light_lamp, ColourWords.Light_dusk), ColourWords.Vidimus_size, ColourWords.Vidimus_pieces,
                ColourWords.Vidimus_onePiece, ColourWords.Vidimus_unchosen, ColourWords.Vidimus_stronger, ColourWords.Vidimus_oneStronger,
                ColourWords.Vidimus_caution);
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        SubMonitor progress = SubMonitor.convert(monitor, getName(), (int) Vidimus.units(order));
        try (Vidimus vidimus = new Vidimus()) {
            Vidimus.write(vidimus.captioned(order, words(), new MonitorWork(progress)), file, order.window(), true);
            shell.getDisplay().asyncExec(() -> {
                if (!shell.isDisposed()) {
                    MessageDialog.openInformation(shell, ColourWords.Picture_title, NLS.bind(ColourWords.Picture_done, file));
                }
            });
            return Status.OK_STATUS;
        } catch (CancellationException e) {
            return Status.CANCEL_STATUS;
        } catch (IOException | Refusal e) {
            return new Status(IStatus.WARNING, Ids.PLUGIN, e.getMessage(), e);
        }
    }
}
