package saddlebar.ui.screening;

import java.text.NumberFormat;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.osgi.util.NLS;

import saddlebar.model.commission.DesignLayer;
import saddlebar.model.commission.Window;
import saddlebar.stencil.mesh.ScoredRuling;
import saddlebar.ui.Messages;
import saddlebar.ui.tree.NodeWords;

/** Numbers and names of the Screen bench, as people read them. */
public final class ScreeningWords {
    private ScreeningWords() {
    }

    /** Layer and window. */
    public static String layer(DesignLayer layer) {
        String name = layer.getName() == null || layer.getName().isBlank() ? NodeWords.role(layer.getRole()) : layer.getName();
        return EcoreUtil.getRootContainer(layer) instanceof Window window && window.getName() != null
                ? NLS.bind(Messages.Recipe_layerOf, name, window.getName())
                : name;
    }

    public static String pair(ScoredRuling pair) {
        return NLS.bind(Messages.Mesh_pair, number(pair.lpi(), 1), number(pair.angleDeg(), 1));
    }

    public static String number(double value, int digits) {
        NumberFormat numbers = NumberFormat.getNumberInstance();
        numbers.setGroupingUsed(false);
        numbers.setMaximumFractionDigits(digits);
        String words = numbers.format(value);
        return words.equals("-0") ? "0" : words;
    }

    public static String percent(double share, int digits) {
        return number(100 * share, digits);
    }
}
