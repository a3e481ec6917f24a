package saddlebar.materials.cost;

import java.util.List;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/** All sources of cost that are there. */
@Component(service = CostSources.class)
public final class CostSources {
    private final List<CostSource> sources;

    @Activate
    public CostSources(@Reference(policyOption = ReferencePolicyOption.GREEDY) List<CostSource> sources) {
        this.sources = List.copyOf(sources);
    }

    /** Those of this bundle, without a platform. */
    public static CostSources own() {
        return new CostSources(List.of(new GlassCost(), new PaintCost(), new SheetCost(), new ScreenCost(), new MetalCost(), new EnergyCost(), new LabourCost(),
                new FixingCost(), new TravelCost(), new RiskCost()));
    }

    public List<CostSource> all() {
        return sources;
    }
}
