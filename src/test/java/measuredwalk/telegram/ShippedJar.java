package measuredwalk.telegram;

import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;

/**
 * The application's classes as they are shipped, without any test's, in one jar. With an
 * archive of its loaded classes each start needs half of the processor's time; the
 * virtual machine takes jars into one, but no folders.
 */
final class ShippedJar {

	private static final List<String> FLAGS = List.of("-Xmx320m", "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1",
			"-Xlog:disable", "-Xlog:all=error:stderr");

	private final Path folder;

	private final Path archive;

	private final String classPath;

	private ShippedJar(Path folder, String classPath) {
		this.folder = folder;
		this.archive = folder.resolve("application.jsa");
		this.classPath = classPath;
	}

	static ShippedJar in(Path folder) throws IOException {
		List<Path> entries = Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
			.filter((entry) -> !entry.contains("test-classes"))
			.map(Path::of)
			.filter(Files::exists)
			.toList();
		Path jar = folder.resolve("application.jar");
		pack(entries.stream().filter(Files::isDirectory).toList(), jar);
		Set<String> path = new LinkedHashSet<>(List.of(jar.toString()));
		entries.stream().filter(Files::isRegularFile).map(Path::toString).forEach(path::add);
		return new ShippedJar(folder, String.join(File.pathSeparator, path));
	}

	private static void pack(List<Path> folders, Path jar) throws IOException {
		Set<String> packed = new HashSet<>();
		try (OutputStream file = Files.newOutputStream(jar); JarOutputStream out = new JarOutputStream(file)) {
			for (Path folder : folders) {
				try (Stream<Path> files = Files.walk(folder)) {
					files.sorted()
						.filter((each) -> !each.equals(folder))
						.forEach((each) -> put(folder, each, packed, out));
				}
			}
		}
	}

	private static void put(Path folder, Path file, Set<String> packed, JarOutputStream out) {
		boolean isFolder = Files.isDirectory(file);
		String name = folder.relativize(file).toString().replace(File.separatorChar, '/') + (isFolder ? "/" : "");
		if (!packed.add(name)) {
			return;
		}
		try {
			out.putNextEntry(new JarEntry(name));
			if (!isFolder) {
				Files.copy(file, out);
			}
			out.closeEntry();
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	/** Lets the application live and end in peace once, by which the archive is made. */
	void makeArchive() throws IOException, InterruptedException {
		try (BotApiStandIn api = new BotApiStandIn()) {
			RunningApplication first = new RunningApplication(Files.createDirectory(this.folder.resolve("first")), api,
					this);
			try {
				first.start();
				first.awaitReady();
				first.stop();
			}
			finally {
				first.kill();
			}
		}
	}

	/** The beginning of the command that starts the application. */
	List<String> command() {
		List<String> flags = new ArrayList<>(FLAGS);
		flags.add((Files.exists(this.archive) ? "-XX:SharedArchiveFile=" : "-XX:ArchiveClassesAtExit=") + this.archive);
		return command(flags);
	}

	/** The same with other flags of the virtual machine, and without the archive. */
	List<String> command(List<String> flags) {
		List<String> command = new ArrayList<>();
		command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
		command.addAll(flags);
		command.addAll(List.of("-cp", this.classPath, "measuredwalk.MeasuredWalk"));
		return command;
	}

}
