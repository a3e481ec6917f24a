package saddlebar.stencil;

import static org.osgi.service.component.annotations.ReferencePolicyOption.GREEDY;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

import saddlebar.model.problem.Refusal;
import saddlebar.stencil.method.AmMethod;
import saddlebar.stencil.method.BlueNoiseMethod;
import saddlebar.stencil.method.DiffusionMethod;
import saddlebar.stencil.method.GreenNoiseMethod;
import saddlebar.stencil.method.HybridMethod;
import saddlebar.stencil.method.LinesMethod;
import saddlebar.stencil.method.SolidMethod;
import saddlebar.stencil.method.StippleMethod;

/** All screening methods that are installed, by key. */
@Component(service = ScreeningMethods.class)
public final class ScreeningMethods {
    private final Map<String, ScreeningMethod> byKey = new TreeMap<>();

    @Activate // static and greedy: a newcomer makes a new collector, so that no map changes under a reader
    public ScreeningMethods(@Reference(policyOption = GREEDY) List<ScreeningMethod> methods) {
        for (ScreeningMethod method : methods) {
            if (byKey.put(method.key(), method) != null) {
                throw new IllegalStateException("two screening methods are called " + method.key() + "; remove one bundle");
            }
        }
    }

    /** The methods of this bundle, for programs and tests that run without OSGi. */
    public static ScreeningMethods ownMethods() {
        return new ScreeningMethods(List.of(new AmMethod(), new DiffusionMethod(), new BlueNoiseMethod(), new GreenNoiseMethod(),
                new HybridMethod(), new LinesMethod(), new StippleMethod(), new SolidMethod()));
    }

    /** @throws Refusal if there is none of that key */
    public ScreeningMethod method(String key) {
        ScreeningMethod method = byKey.get(key);
        if (method == null) {
            throw new Refusal("method", "there is no screening method called " + key, "take one of " + String.join(", ", byKey.keySet()));
        }
        return method;
    }

    public List<String> keys() {
        return List.copyOf(byKey.keySet());
    }
}
