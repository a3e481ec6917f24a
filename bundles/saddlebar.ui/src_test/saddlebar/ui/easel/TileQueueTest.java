package saddlebar.ui.easel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;

import org.junit.jupiter.api.Test;

class TileQueueTest {
    private final List<TileKey> delivered = new ArrayList<>();
    private final List<RuntimeException> faults = new ArrayList<>();
    private final Deque<Runnable> tasks = new ArrayDeque<>();

    private static TileKey tile(int column) {
        return new TileKey(1, 2, column, 0);
    }

    private TileQueue<String> queue(int mostAtOnce) {
        return new TileQueue<>(tasks::add, mostAtOnce, (tile, picture) -> delivered.add(tile), (tile, fault) -> faults.add(fault));
    }

    @Test
    void paintsTheMostUrgentFirst() {
        TileQueue<String> queue = queue(1);
        queue.want(List.of(tile(3), tile(1), tile(2)), (tile, work) -> "x");
        assertEquals(1, tasks.size());
        tasks.poll().run();
        assertEquals(List.of(tile(3), tile(1), tile(2)), delivered);
    }

    @Test
    void whatIsNoLongerWantedIsNotBegun() {
        TileQueue<String> queue = queue(1);
        queue.want(List.of(tile(1), tile(2)), (tile, work) -> "x");
        queue.want(List.of(tile(9)), (tile, work) -> "x");
        tasks.forEach(Runnable::run);
        assertEquals(List.of(tile(9)), delivered);
    }

    @Test
    void whatIsBegunAndNoLongerWantedStopsAtItsNextCheckpoint() {
        TileQueue<String> queue = queue(1);
        boolean[] stopped = {false};
        queue.want(List.of(tile(1)), (tile, work) -> {
            if (tile.equals(tile(1))) {
                work.checkpoint(); // still wanted
                queue.want(List.of(tile(2)), (other, otherWork) -> "x");
                try {
                    work.checkpoint();
                } catch (CancellationException e) {
                    stopped[0] = true;
                    throw e;
                }
            }
            return "x";
        });
        tasks.forEach(Runnable::run);
        assertTrue(stopped[0]);
        assertEquals(List.of(tile(2)), delivered);
    }

    @Test
    void aFaultIsToldAndTheRestGoesOn() {
        TileQueue<String> queue = queue(1);
        queue.want(List.of(tile(1), tile(2)), (tile, work) -> {
            if (tile.equals(tile(1))) {
                throw new IllegalStateException("torn");
            }
            return "x";
        });
        tasks.forEach(Runnable::run);
        assertEquals(List.of(tile(2)), delivered);
        assertEquals("torn", faults.get(0).getMessage());
    }

    @Test
    void asManyAtOnceAsAllowedAndAllComeOnce() throws InterruptedException {
        int tiles = 200;
        List<TileKey> wanted = new ArrayList<>();
        for (int i = 0; i < tiles; i++) {
            wanted.add(tile(i));
        }
        CountDownLatch all = new CountDownLatch(tiles);
        List<TileKey> got = Collections.synchronizedList(new ArrayList<>());
        ExecutorService pool = Executors.newFixedThreadPool(4);
        try {
            TileQueue<Integer> queue = new TileQueue<>(pool, 3, (tile, picture) -> {
                got.add(tile);
                all.countDown();
            }, (tile, fault) -> faults.add(fault));
            queue.want(wanted, (tile, work) -> tile.column());
            assertTrue(all.await(20, TimeUnit.SECONDS));
        } finally {
            pool.shutdown();
            assertTrue(pool.awaitTermination(20, TimeUnit.SECONDS));
        }
        assertEquals(List.of(), faults);
        assertEquals(tiles, got.stream().distinct().count());
        assertEquals(tiles, got.size());
    }
}
