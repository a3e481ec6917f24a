package saddlebar.production.studio;

import java.util.List;

import org.eclipse.emf.common.util.EList;

import saddlebar.model.commission.Mesh;
import saddlebar.model.commission.Named;
import saddlebar.model.commission.Paint;
import saddlebar.model.commission.Printer;
import saddlebar.model.commission.Studio;
import saddlebar.model.problem.Refusal;

/** Things of a studio by the names that people type. */
public final class StudioThings {
    private StudioThings() {
    }

    /** @throws Refusal if the studio has none of that name */
    public static Paint paint(Studio studio, String name) {
        return named("paint", studio.getPaints(), name);
    }

    /** @throws Refusal if the studio has none of that name */
    public static Mesh mesh(Studio studio, String name) {
        return named("mesh", studio.getMeshes(), name);
    }

    /** The one of that name; without a name the first, which is the one that is meant where none is chosen. */
    public static Printer printer(Studio studio, String name) {
        if (studio.getPrinters().isEmpty()) {
            throw new Refusal("printer", "the studio has no printer", "add one in the desktop's studio");
        }
        return name == null ? studio.getPrinters().get(0) : named("printer", studio.getPrinters(), name);
    }

    private static <T extends Named> T named(String what, EList<T> all, String name) {
        return all.stream().filter(thing -> name.equalsIgnoreCase(thing.getName())).findFirst().orElseThrow(() -> {
            List<String> names = all.stream().map(Named::getName).toList();
            return new Refusal(what + " " + name, "the studio has no " + what + " of this name",
                    names.isEmpty() ? "add it to the studio first" : "take one of " + String.join(", ", names));
        });
    }
}
