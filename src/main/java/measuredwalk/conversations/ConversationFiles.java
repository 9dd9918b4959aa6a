package measuredwalk.conversations;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.UnaryOperator;

import org.jspecify.annotations.Nullable;
import org.springframework.core.io.Resource;
import org.springframework.core.io.ResourceLoader;

/**
 * The folder of conversation files: the one packed in the jar, or one named in a setting.
 */
final class ConversationFiles {

	private static final String SETTING = "measuredwalk.conversations";

	private final ResourceLoader loader;

	private final String folder;

	private final String location;

	private final UnaryOperator<String> wording;

	ConversationFiles(ResourceLoader loader, String setting) {
		this.loader = loader;
		this.wording = UnaryOperator.identity();
		this.folder = setting.isBlank() ? "conversations" : setting;
		if (setting.isBlank()) {
			this.location = "classpath:conversations/";
		}
		else if (Files.isDirectory(Path.of(setting))) {
			this.location = Path.of(setting).toUri().toString();
		}
		else {
			throw new ConversationFileProblem(SETTING + " names the folder '" + setting
					+ "', which is not there; name a folder of conversation files, or leave the setting out.");
		}
	}

	private ConversationFiles(ConversationFiles from, @Nullable String subfolder, UnaryOperator<String> wording) {
		this.loader = from.loader;
		this.folder = (subfolder != null) ? from.folder + "/" + subfolder : from.folder;
		this.location = (subfolder != null) ? from.location + subfolder + "/" : from.location;
		this.wording = wording;
	}

	/** The files of a language, in its words. */
	ConversationFiles in(Tongue tongue, boolean saysVet) {
		ConversationFiles own = new ConversationFiles(this, tongue.folder(), UnaryOperator.identity());
		UnaryOperator<String> words = own.wording(tongue.words());
		UnaryOperator<String> vet = own.wording(saysVet ? tongue.vet() : null);
		return new ConversationFiles(this, tongue.folder(), (text) -> vet.apply(words.apply(text)));
	}

	private UnaryOperator<String> wording(@Nullable String name) {
		return (name != null) ? Wordings.read(file(name)) : UnaryOperator.identity();
	}

	/** A file's name as it stands in complaints. */
	String name(String name) {
		return this.folder + "/" + name;
	}

	boolean has(String name) {
		return this.loader.getResource(this.location + name).exists();
	}

	YamlMap file(String name) {
		String file = this.folder + "/" + name;
		Resource resource = this.loader.getResource(this.location + name);
		if (!resource.exists()) {
			throw new ConversationFileProblem("The file " + file + " is missing; put it back, or leave the setting "
					+ SETTING + " out to use the conversations that are packed in the jar.");
		}
		try (Reader reader = new InputStreamReader(resource.getInputStream(), StandardCharsets.UTF_8)) {
			return YamlMap.read(file, reader, this.wording);
		}
		catch (IOException ex) {
			throw new ConversationFileProblem("The file " + file + " cannot be read: " + ex.getMessage() + ".");
		}
	}

}
