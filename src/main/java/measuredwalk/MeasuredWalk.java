package measuredwalk;

import java.io.BufferedReader;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

import measuredwalk.clinic.backup.RestoreTool;
import measuredwalk.command.Tool;
import measuredwalk.reading.MessageReader;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Starts the server, or one of the jar's tools when the first word names one. */
@SpringBootApplication
public class MeasuredWalk {

	public static void main(String[] arguments) throws IOException {
		if (RestoreTool.named(List.of(arguments))) {
			System.exit(RestoreTool.run(List.of(arguments), System.out));
		}
		Optional<Tool> tool = Tool.named(List.of(arguments));
		if (tool.isPresent()) {
			run(tool.get());
		}
		else {
			makeReader();
			SpringApplication.run(MeasuredWalk.class, arguments);
		}
	}

	/**
	 * The reader's words are loaded beside everything else, which saves a second of the
	 * start. A fault in them is told where the reader is asked for.
	 */
	private static void makeReader() {
		Thread loading = new Thread(MessageReader::standard, "reader");
		loading.setDaemon(true);
		loading.setUncaughtExceptionHandler((thread, fault) -> {
		});
		loading.start();
	}

	private static void run(Tool tool) throws IOException {
		PrintStream output = new PrintStream(new FileOutputStream(FileDescriptor.out), true, StandardCharsets.UTF_8);
		tool.run(new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8)), output);
	}

}
