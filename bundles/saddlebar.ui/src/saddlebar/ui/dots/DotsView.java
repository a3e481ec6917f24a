package saddlebar.ui.dots;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Optional;
import java.util.concurrent.CancellationException;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.ISelectionListener;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.part.ViewPart;

import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.LayerRole;
import saddlebar.model.commission.MadeFile;
import saddlebar.model.commission.Mesh;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.ScreenFrame;
import saddlebar.model.commission.Stencil;
import saddlebar.model.problem.Refusal;
import saddlebar.ui.Messages;
import saddlebar.ui.desk.CommissionDesk;
import saddlebar.ui.desk.OpenCommission;
import saddlebar.ui.make.MonitorWork;

/** The dots of the chosen stencil, as its file has them; of a layer its first stencil, of a piece its matt's, or what else prints on it. */
public final class DotsView extends ViewPart implements ISelectionListener {
    private static final int[] NOWHERE = {0, 0};

    private CommissionDesk desk;
    private DotsCanvas dots;
    private Button meshShown;
    private Label facts;
    private Optional<Stencil> shown = Optional.empty();
    private Job reading;
    private final CommissionDesk.Listener onDesk = new CommissionDesk.Listener() {
        @Override
        public void closing(OpenCommission commission) {
            show(Optional.empty());
        }
    };

    @Override
    public void createPartControl(Composite parent) {
        Composite body = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(1).margins(4, 4).applyTo(body);
        meshShown = new Button(body, SWT.CHECK);
        meshShown.setText(Messages.Dots_mesh);
        meshShown.setSelection(true);
        meshShown.addListener(SWT.Selection, event -> dots.setMesh(mesh()));
        dots = new DotsCanvas(body);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(dots);
        dots.whenViewChanges(this::tell);
        facts = new Label(body, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(facts);
        desk = getSite().getService(CommissionDesk.class);
        desk.addListener(onDesk);
        getSite().getPage().addSelectionListener(this);
        show(Optional.empty());
        ISelection now = getSite().getPage().getSelection();
        if (now != null) {
            selectionChanged(null, now);
        }
    }

    @Override
    public void selectionChanged(IWorkbenchPart part, ISelection selection) {
        if (part != this && selection instanceof IStructuredSelection structured) {
            stencil(structured.getFirstElement()).filter(stencil -> shown.isEmpty() || shown.get() != stencil)
                    .ifPresent(stencil -> show(Optional.of(stencil)));
        }
    }

    /** Which stencil a thing leads to. */
    static Optional<Stencil> stencil(Object thing) {
        if (thing instanceof Stencil stencil) {
            return Optional.of(stencil);
        }
        if (thing instanceof DesignLayer layer) {
            return layer.getStencils().stream().filter(stencil -> !stencil.isRetired()).min(Comparator.comparingInt(Stencil::getNumber));
        }
        if (thing instanceof Piece piece && piece.eContainer() instanceof Panel panel) {
            return panel.getLayers().stream().sorted(Comparator.comparing((DesignLayer layer) -> layer.getRole() != LayerRole.MATT))
                    .flatMap(layer -> layer.getStencils().stream())
                    .filter(stencil -> !stencil.isRetired() && stencil.getPieces().stream().anyMatch(entry -> entry.getPiece() == piece)).findFirst();
        }
        return Optional.empty();
    }

    private void show(Optional<Stencil> stencil) {
        if (reading != null) {
            reading.cancel();
            reading = null;
        }
        shown = stencil;
        dots.setMesh(mesh());
        Optional<Path> file = stencil.flatMap(this::file);
        if (file.isEmpty()) {
            dots.show(Optional.empty(), NOWHERE, stencil.isPresent() ? Messages.Dots_noFile : Messages.Dots_chooseOne);
        } else {
            dots.show(Optional.empty(), NOWHERE, Messages.Dots_reading);
            read(stencil.get(), file.get());
        }
        meshShown.setEnabled(stencil.flatMap(DotsView::meshOf).isPresent());
        tell();
    }

    private Optional<Path> file(Stencil stencil) {
        return stencil.getFiles().stream().map(MadeFile::getFile).filter(file -> file != null && file.endsWith(".tif")).findFirst()
                .flatMap(file -> desk.commission().map(open -> open.path().resolve(file))).filter(Files::isRegularFile);
    }

    private void read(Stencil stencil, Path file) {
        Display display = dots.getDisplay();
        reading = new Job(NLS.bind(Messages.Dots_job, file.getFileName())) {
            @Override
            protected IStatus run(IProgressMonitor monitor) {
                try {
                    StencilBits bits = StencilBits.read(file, new MonitorWork(SubMonitor.convert(monitor, StencilBits.UNITS)));
                    int[] place = bits.halfCovered();
                    display.asyncExec(() -> take(stencil, Optional.of(bits), place, ""));
                    return Status.OK_STATUS;
                } catch (CancellationException e) {
                    return Status.CANCEL_STATUS;
                } catch (IOException | Refusal e) {
                    display.asyncExec(() -> take(stencil, Optional.empty(), NOWHERE, e.getMessage()));
                    return Status.OK_STATUS; // said where the dots would be
                }
            }
        };
        reading.setPriority(Job.SHORT);
        reading.schedule();
    }

    private void take(Stencil stencil, Optional<StencilBits> bits, int[] placePx, String words) {
        if (!dots.isDisposed() && shown.isPresent() && shown.get() == stencil) {
            dots.show(bits, placePx, words);
        }
    }

    private Optional<MeshLines> mesh() {
        return meshShown.getSelection() ? shown.flatMap(DotsView::meshOf) : Optional.empty();
    }

    private static Optional<MeshLines> meshOf(Stencil stencil) {
        ScreenFrame frame = stencil.getFrame();
        Mesh mesh = frame == null ? null : frame.getMesh();
        return mesh == null || mesh.getThreadsPerInch() < 1
                ? Optional.empty()
                : Optional.of(new MeshLines(mesh.getThreadsPerInch(), mesh.getThreadUm(), frame.getMeshTurnDeg()));
    }

    private void tell() {
        StringBuilder words = new StringBuilder();
        shown.ifPresent(stencil -> {
            String layer = stencil.getLayer() == null || stencil.getLayer().getName() == null ? "" : stencil.getLayer().getName();
            words.append(NLS.bind(Messages.Dots_stencil, layer, stencil.getNumber()));
            words.append("   ").append(NLS.bind(Messages.Dots_zoom, number(dots.zoom())));
            words.append("   ").append(NLS.bind(Messages.Dots_share, Math.round(dots.shareInView() * 100)));
            meshOf(stencil).ifPresent(mesh -> words.append("   ").append(NLS.bind(Messages.Dots_meshOpen, stencil.getFrame().getMesh().getName(),
                    Math.round(mesh.openShare() * 100))));
        });
        if (!words.toString().equals(facts.getText())) {
            facts.setText(words.toString());
            facts.getParent().layout();
        }
    }

    private static String number(double zoom) {
        return zoom >= 1 ? String.valueOf(Math.round(zoom)) : "1/" + Math.round(1 / zoom);
    }

    @Override
    public void setFocus() {
        dots.setFocus();
    }

    @Override
    public void dispose() {
        if (desk != null) {
            desk.removeListener(onDesk);
            getSite().getPage().removeSelectionListener(this);
        }
        if (reading != null) {
            reading.cancel();
        }
        super.dispose();
    }
}
