package saddlebar.stencil.process;

import static org.osgi.service.component.annotations.ReferencePolicyOption.GREEDY;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;

import saddlebar.model.problem.Refusal;

/** All stencil processes that are installed, by key. */
@Component(service = StencilProcesses.class)
public final class StencilProcesses {
    private final Map<String, StencilProcess> byKey = new TreeMap<>();

    @Activate
    public StencilProcesses(@Reference(policyOption = GREEDY) List<StencilProcess> processes) {
        for (StencilProcess process : processes) {
            if (byKey.put(process.key(), process) != null) {
                throw new IllegalStateException("two stencil processes are called " + process.key() + "; remove one bundle");
            }
        }
    }

    /** The processes of this bundle, for programs and tests that run without OSGi. */
    public static StencilProcesses ownProcesses() {
        return new StencilProcesses(List.of(new FusedSheetProcess(), new FilmPositiveProcess()));
    }

    /** @throws Refusal if there is none of that key */
    public StencilProcess process(String key) {
        StencilProcess process = byKey.get(key);
        if (process == null) {
            throw new Refusal("process", "there is no stencil process called " + key, "take one of " + String.join(", ", byKey.keySet()));
        }
        return process;
    }

    public List<String> keys() {
        return List.copyOf(byKey.keySet());
    }
}
