package measuredwalk;

import java.sql.SQLException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Stream;

import org.jspecify.annotations.Nullable;
import org.springframework.boot.SpringBootExceptionReporter;
import org.springframework.boot.context.properties.bind.BindException;
import org.springframework.boot.context.properties.source.InvalidConfigurationPropertyValueException;
import org.springframework.boot.web.server.PortInUseException;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.core.env.Environment;

/** Says in one line why the program cannot start: which setting or file, and the fix. */
class StartProblems implements SpringBootExceptionReporter {

	private static final String DATABASE = "spring.datasource.url";

	/** H2's own number for 'the file is in use by another program'. */
	private static final int H2_IN_USE = 90020;

	private static final List<String> OWN_PROBLEMS = List.of("SettingProblem", "ConversationFileProblem",
			"LexiconError");

	private final @Nullable Environment environment;

	StartProblems(@Nullable ConfigurableApplicationContext context) {
		this.environment = (context != null) ? context.getEnvironment() : null;
	}

	@Override
	public boolean reportException(Throwable failure) {
		Optional<String> line = line(failure);
		line.ifPresent((text) -> System.err.println("Measured Walk cannot start. " + text));
		return line.isPresent();
	}

	Optional<String> line(Throwable failure) {
		return causes(failure).map(this::known).flatMap(Optional::stream).findFirst();
	}

	private static Stream<Throwable> causes(Throwable failure) {
		return Stream.iterate(failure, (cause) -> cause != null, Throwable::getCause);
	}

	private Optional<String> known(Throwable cause) {
		if (OWN_PROBLEMS.contains(cause.getClass().getSimpleName())) {
			return Optional.of(String.valueOf(cause.getMessage()));
		}
		Map<Class<? extends Throwable>, BiFunction<StartProblems, Throwable, String>> kinds = new LinkedHashMap<>();
		kinds.put(PortInUseException.class, StartProblems::port);
		kinds.put(BindException.class, StartProblems::setting);
		kinds.put(InvalidConfigurationPropertyValueException.class, StartProblems::value);
		kinds.put(SQLException.class, StartProblems::database);
		return kinds.entrySet()
			.stream()
			.filter((kind) -> kind.getKey().isInstance(cause))
			.findFirst()
			.map((kind) -> kind.getValue().apply(this, cause));
	}

	private String port(Throwable cause) {
		return "server.port is " + ((PortInUseException) cause).getPort()
				+ ", and another program uses that port; stop it, or set server.port to another number.";
	}

	private String setting(Throwable cause) {
		BindException problem = (BindException) cause;
		Object value = (problem.getProperty() != null) ? problem.getProperty().getValue() : "";
		return wrongValue(problem.getName(), value);
	}

	private String value(Throwable cause) {
		InvalidConfigurationPropertyValueException problem = (InvalidConfigurationPropertyValueException) cause;
		return wrongValue(problem.getName(), problem.getValue());
	}

	private static String wrongValue(Object name, @Nullable Object value) {
		return name + " is '" + value
				+ "', which cannot be used there; set it to a value of the right kind or leave it out.";
	}

	private String database(Throwable cause) {
		SQLException problem = (SQLException) cause;
		String url = (this.environment != null) ? this.environment.getProperty(DATABASE, "") : "";
		String place = DATABASE + " names the database '" + url + "', ";
		if (problem.getErrorCode() == H2_IN_USE) {
			return place + "which another program has open; stop that program, or name another file.";
		}
		return place + "which cannot be used: " + firstLine(problem) + " Check that it is there, that it is not"
				+ " damaged, and that user and password are right.";
	}

	private static String firstLine(SQLException problem) {
		String line = String.valueOf(problem.getMessage()).lines().findFirst().orElse("");
		int details = line.indexOf("; SQL statement:");
		String text = (details < 0) ? line : line.substring(0, details);
		return text.endsWith(".") ? text : text + ".";
	}

}
