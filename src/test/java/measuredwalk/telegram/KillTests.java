package measuredwalk.telegram;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * The application is killed again and again while people write. How often is set by
 * {@code -Dmeasuredwalk.kills=30}, or 300 by the profile {@code kills}. Two applications
 * live and die side by side, as a start keeps only one core busy.
 */
class KillTests {

	private static final int KILLS = Integer.getInteger("measuredwalk.kills", 30);

	private static final int SIDE_BY_SIDE = 2;

	private static final long SEED = 20260314;

	@Test
	void losesNothingAndRepeatsOnlyWhatMayNotHaveArrived(@TempDir(cleanup = CleanupMode.ON_SUCCESS) Path folder)
			throws Exception {
		ShippedJar jar = ShippedJar.in(folder);
		jar.makeArchive();
		ExecutorService side = Executors.newFixedThreadPool(SIDE_BY_SIDE);
		try {
			List<Future<Integer>> lives = IntStream.range(0, SIDE_BY_SIDE)
				.mapToObj((number) -> side.submit(() -> live(number, folder, jar)))
				.toList();
			int kills = 0;
			for (Future<Integer> each : lives) {
				kills += each.get();
			}
			assertThat(kills).isEqualTo(KILLS);
		}
		finally {
			side.shutdownNow();
		}
	}

	private static int live(int number, Path folder, ShippedJar jar) throws Exception {
		int kills = (KILLS + number) / SIDE_BY_SIDE;
		new KilledLives(kills, SEED + number).live(Files.createDirectory(folder.resolve("side" + number)), jar);
		return kills;
	}

}
