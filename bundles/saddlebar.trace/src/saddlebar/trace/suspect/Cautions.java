package saddlebar.trace.suspect;

import java.util.ArrayList;
import java.util.List;

/** What must be known before anybody acts on a list of suspects, in words. */
final class Cautions {
    private static final int FEW_BAD = 5;

    private Cautions() {
    }

    static List<String> of(int units, int bad, List<Suspect> suspects) {
        List<String> cautions = new ArrayList<>();
        if (bad == 0) {
            cautions.add("No flaw is recorded among " + units + " prints: there is nothing to explain.");
            return cautions;
        }
        if (bad == units) {
            cautions.add("Every one of " + units + " prints is flawed: with no good work beside it nothing can be compared. Look at what all of it"
                    + " went through, or choose a wider range of work.");
            return cautions;
        }
        if (bad < FEW_BAD) {
            cautions.add("Only " + bad + (bad == 1 ? " flaw is" : " flaws are") + " recorded: a cause would have to be very plain to show. What is not"
                    + " listed is not cleared.");
        }
        if (suspects.stream().noneMatch(s -> s.standing() == Standing.LEADING)) {
            cautions.add("Nothing stands out beyond chance. That clears nothing: look again when more work is recorded.");
        }
        for (Suspect suspect : suspects) {
            if (suspect.standing() == Standing.LEADING || suspect.standing() == Standing.ALSO) {
                if (suspect.levels().size() > 1) {
                    cautions.add(String.join(" / ", suspect.levels().stream().map(Level::toString).toList())
                            + " always came together and cannot be told apart. A test print that uses one without the other would tell.");
                }
                if (suspect.levels().stream().anyMatch(level -> level.factor().equals(PERSON))) {
                    cautions.add("Where a name stands in the list, it says where to look, not who is at fault: screens, mixes and days differ with who"
                            + " works when.");
                }
            }
        }
        return cautions.stream().distinct().toList();
    }

    /** The factor that names people. */
    static final String PERSON = "who";
}
