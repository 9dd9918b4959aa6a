package measuredwalk.telegram;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * The application is ended again and again while people write. How often it is killed is
 * set by {@code -Dmeasuredwalk.kills=30}, or 300 by the profile {@code kills}. Two
 * applications live and die side by side, as a start keeps only one core busy.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class KillTests {

	private static final int KILLS = Integer.getInteger("measuredwalk.kills", 30);

	private static final int SIDE_BY_SIDE = 2;

	private static final long SEED = 20260314;

	@TempDir(cleanup = CleanupMode.ON_SUCCESS)
	private static Path folder;

	private ShippedJar jar;

	@BeforeAll
	void makeArchive() throws IOException, InterruptedException {
		this.jar = ShippedJar.in(folder);
		this.jar.makeArchive();
	}

	@Test
	void killedItLosesNothingAndRepeatsOnlyWhatMayNotHaveArrived() throws Exception {
		assertThat(ends(Ending.KILLED, KILLS)).isEqualTo(KILLS);
	}

	@Test
	void askedToStopItEndsInTimeAndLosesAndRepeatsNothing() throws Exception {
		int stops = SIDE_BY_SIDE;
		assertThat(ends(Ending.STOPPED, stops)).isEqualTo(stops);
	}

	private int ends(Ending ending, int ends) throws InterruptedException, ExecutionException {
		ExecutorService side = Executors.newFixedThreadPool(SIDE_BY_SIDE);
		try {
			List<Future<Integer>> lives = IntStream.range(0, SIDE_BY_SIDE)
				.mapToObj((number) -> side.submit(() -> live(ending, (ends + number) / SIDE_BY_SIDE, number)))
				.toList();
			int brought = 0;
			for (Future<Integer> each : lives) {
				brought += each.get();
			}
			return brought;
		}
		finally {
			side.shutdownNow();
		}
	}

	private int live(Ending ending, int ends, int number) throws Exception {
		Path own = Files.createDirectory(folder.resolve(ending.name() + number));
		new EndedLives(ending, ends, SEED + number).live(own, this.jar);
		return ends;
	}

}
