package saddlebar.ui.screening;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;

import org.junit.jupiter.api.Test;

class NewestWinsTest {
    private final Queue<Runnable> thread = new ArrayDeque<>();
    private final List<String> done = new ArrayList<>();

    @Test
    void whatWaitsIsOverriddenByWhatIsNewer() {
        NewestWins<String> wins = new NewestWins<>(thread::add, (what, work) -> done.add(what));
        wins.ask("first");
        wins.ask("second");
        wins.ask("third");
        assertEquals(1, thread.size(), "one thing at a time");
        thread.remove().run();
        assertEquals(List.of("third"), done);
        wins.ask("fourth");
        thread.remove().run();
        assertEquals(List.of("third", "fourth"), done);
    }

    @Test
    void whatIsBeingDoneStopsWhenSomethingNewerIsWanted() {
        List<NewestWins<String>> self = new ArrayList<>();
        self.add(new NewestWins<>(thread::add, (what, work) -> {
            done.add("begun " + what);
            if (what.equals("old")) {
                self.get(0).ask("new");
            }
            work.checkpoint();
            done.add("shown " + what);
        }));
        self.get(0).ask("old");
        thread.remove().run();
        assertEquals(List.of("begun old", "begun new", "shown new"), done);
        assertEquals(0, thread.size());
    }

    @Test
    void whatIsForgottenIsNotDone() {
        NewestWins<String> wins = new NewestWins<>(thread::add, (what, work) -> done.add(what));
        wins.ask("one");
        wins.forget();
        thread.remove().run();
        assertEquals(List.of(), done);
    }
}
