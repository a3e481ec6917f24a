package saddlebar.ui.tree;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

import org.eclipse.jface.viewers.ITreeContentProvider;

import saddlebar.model.commission.Commission;
import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.Panel;
import saddlebar.model.commission.Piece;
import saddlebar.model.commission.Sheet;
import saddlebar.model.commission.Stencil;
import saddlebar.model.commission.Studio;
import saddlebar.model.commission.Window;
import saddlebar.model.problem.Refusal;
import saddlebar.ui.desk.OpenCommission;
import saddlebar.ui.tree.GroupNode.Kind;

/** What lies under what. Windows are read when they are opened, not before; a window that cannot be read has nothing under it. */
final class CommissionContent implements ITreeContentProvider {
    private final Supplier<Optional<OpenCommission>> open;

    CommissionContent(Supplier<Optional<OpenCommission>> open) {
        this.open = open;
    }

    @Override
    public Object[] getElements(Object input) {
        return open.get().map(commission -> new Object[] {commission.commission()}).orElseGet(() -> new Object[0]);
    }

    @Override
    public Object[] getChildren(Object parent) {
        return children(parent).toArray();
    }

    private List<?> children(Object parent) {
        if (parent instanceof Commission commission) {
            List<Object> children = new ArrayList<>();
            open.get().ifPresent(opened -> opened.windowNames().forEach(name -> children.add(new WindowNode(name))));
            children.add(new GroupNode(commission, Kind.SHEETS));
            if (commission.getStudio() != null) {
                children.add(commission.getStudio());
            }
            return children;
        }
        if (parent instanceof WindowNode node) {
            return panels(node);
        }
        if (parent instanceof Panel panel) {
            List<Object> children = new ArrayList<>(panel.getLayers().stream().sorted(Comparator.comparingInt(DesignLayer::getFiringOrder)).toList());
            children.add(new GroupNode(panel, Kind.PIECES));
            return children;
        }
        if (parent instanceof DesignLayer layer) {
            return layer.getStencils().stream().filter(stencil -> !stencil.isRetired()).sorted(Comparator.comparingInt(Stencil::getNumber)).toList();
        }
        if (parent instanceof Studio studio) {
            return List.of(new GroupNode(studio, Kind.FRAMES), new GroupNode(studio, Kind.PAINTS), new GroupNode(studio, Kind.GLASS),
                    new GroupNode(studio, Kind.KILNS));
        }
        return parent instanceof GroupNode group ? members(group) : List.of();
    }

    /** Why a window cannot be read stands where its panels would. */
    private List<?> panels(WindowNode node) {
        try {
            return open.get().flatMap(opened -> opened.window(node.name())).map(Window::getPanels).map(panels -> (List<?>) panels).orElse(List.of());
        } catch (Refusal e) {
            return List.of(e.getMessage());
        }
    }

    static List<?> members(GroupNode group) {
        return switch (group.kind()) {
            case PIECES -> ((Panel) group.owner()).getPieces().stream().filter(piece -> !piece.isRetired())
                    .sorted(Comparator.comparingInt(Piece::getNumber)).toList();
            case SHEETS -> ((Commission) group.owner()).getSheets().stream().sorted(Comparator.comparingInt(Sheet::getNumber)).toList();
            case FRAMES -> ((Studio) group.owner()).getFrames();
            case PAINTS -> ((Studio) group.owner()).getPaints();
            case GLASS -> ((Studio) group.owner()).getGlass();
            case KILNS -> ((Studio) group.owner()).getKilns();
        };
    }

    @Override
    public Object getParent(Object element) {
        if (element instanceof WindowNode) {
            return open.get().map(OpenCommission::commission).orElse(null);
        }
        if (element instanceof Panel panel) {
            return panel.getWindow() == null ? null : new WindowNode(panel.getWindow().getName());
        }
        if (element instanceof DesignLayer layer) {
            return layer.getPanel();
        }
        if (element instanceof Stencil stencil) {
            return stencil.getLayer();
        }
        if (element instanceof Piece piece) {
            return new GroupNode(piece.getPanel(), Kind.PIECES);
        }
        if (element instanceof Sheet sheet) {
            return new GroupNode(sheet.getCommission(), Kind.SHEETS);
        }
        if (element instanceof Studio) {
            return open.get().map(OpenCommission::commission).orElse(null);
        }
        if (element instanceof GroupNode group) {
            return group.owner();
        }
        return null;
    }

    @Override
    public boolean hasChildren(Object element) {
        if (element instanceof WindowNode) {
            return true; // not read for the sake of a small triangle
        }
        return !children(element).isEmpty();
    }
}
