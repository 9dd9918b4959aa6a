package measuredwalk.clinic.backup;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.ZipException;

import javax.sql.DataSource;

import org.springframework.boot.WebApplicationType;
import org.springframework.boot.autoconfigure.ImportAutoConfiguration;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.boot.jdbc.autoconfigure.DataSourceAutoConfiguration;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.annotation.Configuration;

/**
 * {@code java -jar measured-walk.jar restore FILE}: fills the empty database that the
 * settings name from a backup.
 */
public final class RestoreTool {

	private static final String NAME = "restore";

	private RestoreTool() {
	}

	/**
	 * Whether the command line asks for it.
	 * @param words the command line
	 * @return true when it does
	 */
	public static boolean named(List<String> words) {
		return !words.isEmpty() && words.get(0).equals(NAME);
	}

	/**
	 * Restores a backup.
	 * @param words the command line: the tool's name, the file, and settings if any
	 * @param output where it says what it did
	 * @return the exit status: 0 when all is restored
	 */
	public static int run(List<String> words, PrintStream output) {
		if (words.size() < 2) {
			output.println("Name the backup: java -jar measured-walk.jar restore FILE");
			return 2;
		}
		try (ConfigurableApplicationContext settings = new SpringApplicationBuilder(DatabaseOnly.class)
			.web(WebApplicationType.NONE)
			.run(words.subList(2, words.size()).toArray(String[]::new))) {
			return restore(settings.getBean(DataSource.class), Path.of(words.get(1)), output);
		}
	}

	static int restore(DataSource database, Path file, PrintStream output) {
		try {
			output.println("Restored " + new Restore(database).from(file) + " rows. Start the program as usual.");
			return 0;
		}
		catch (ZipException ex) {
			output.println(file + " cannot be restored. It is no zip file, or damaged: take another copy of it.");
		}
		catch (IOException ex) {
			output.println(file + " cannot be read: check that it is there, and that you may read it.");
		}
		catch (RestoreProblem ex) {
			output.println(file + " cannot be restored. " + ex.getMessage());
		}
		return 1;
	}

	/** The database as the settings name it, and nothing else of the program. */
	@Configuration(proxyBeanMethods = false)
	@ImportAutoConfiguration(DataSourceAutoConfiguration.class)
	static class DatabaseOnly {

	}

}
