package saddlebar.kiln.fire;

import java.util.List;

import saddlebar.kiln.glass.Vft;
import saddlebar.kiln.paint.HeatWork;
import saddlebar.kiln.schedule.HeatCurve;
import saddlebar.kiln.schedule.Schedule;

/**
 * A simulated firing.
 *
 * @param schedule  what was asked for
 * @param load      what was in it
 * @param kiln      which kiln
 * @param trace     temperatures and stresses over time
 * @param segments  each segment as the kiln ran it
 * @param energy    where the heat went
 * @param annealing whether the glass is annealed
 * @param cutOff    it was not over when the simulation's time was
 */
public record Firing(Schedule schedule, Load load, Kiln kiln, Trace trace, List<SegmentRun> segments, EnergyAccount energy, Annealing annealing,
        boolean cutOff) {
    public Firing {
        segments = List.copyOf(segments);
    }

    public double hours() {
        return trace.timeS(trace.size() - 1) / 3600;
    }

    public HeatCurve kilnCurve() {
        return trace.curve(Trace.Quantity.KILN_C);
    }

    /** Temperature of the painted, upper face. */
    public HeatCurve faceCurve() {
        return trace.curve(Trace.Quantity.TOP_C);
    }

    public HeatCurve coreCurve() {
        return trace.curve(Trace.Quantity.CORE_C);
    }

    public double peakC() {
        return trace.most(Trace.Quantity.KILN_C);
    }

    /** Largest difference between the upper face and any depth of the glass, K. */
    public double coreLagMaxK() {
        return trace.most(Trace.Quantity.LAG_K);
    }

    /** Largest tension anywhere in the glass at any time, MPa. */
    public double tensionMaxMpa() {
        return trace.most(Trace.Quantity.TENSION_MPA);
    }

    /** Phi of the painted face in 1/Pa. */
    public double heatWork(Vft viscosity) {
        return HeatWork.of(faceCurve(), viscosity);
    }

    /** Hours until the kiln may be opened: the last time it is at 80 degC or hotter. */
    public double hoursToOpen() {
        for (int i = trace.size() - 1; i >= 0; i--) {
            if (trace.value(Trace.Quantity.KILN_C, i) > 80) {
                return trace.timeS(i) / 3600;
            }
        }
        return hours();
    }
}
