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

import measuredwalk.command.Tool;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.boot.context.properties.ConfigurationPropertiesScan;

/** Starts the server, or one of the jar's tools when the first word names one. */
@SpringBootApplication
@ConfigurationPropertiesScan
public class MeasuredWalk {

	public static void main(String[] arguments) throws IOException {
		Optional<Tool> tool = Tool.named(List.of(arguments));
		if (tool.isPresent()) {
			run(tool.get());
		}
		else {
			SpringApplication.run(MeasuredWalk.class, arguments);
		}
	}

	private static void run(Tool tool) throws IOException {
		PrintStream output = new PrintStream(new FileOutputStream(FileDescriptor.out), true, StandardCharsets.UTF_8);
		tool.run(new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8)), output);
	}

}
