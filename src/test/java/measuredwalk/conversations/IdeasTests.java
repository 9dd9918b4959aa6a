package measuredwalk.conversations;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.core.io.DefaultResourceLoader;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

class IdeasTests {

	private static Ideas read(String text) {
		return Ideas.read(YamlMap.read("ideas.yaml", new StringReader(text)));
	}

	@Test
	void allIdeasTakeTurnsBeforeOneComesAgain() {
		Ideas ideas = Ideas.read(new ConversationFiles(new DefaultResourceLoader(), ""));
		List<String> said = new ArrayList<>(List.of(ideas.after(null)));
		while (said.size() < ideas.ideas().size()) {
			said.add(ideas.after(said.get(said.size() - 1)));
		}
		assertThat(said).containsExactlyElementsOf(ideas.ideas());
		assertThat(ideas.after(said.get(said.size() - 1))).isEqualTo(said.get(0));
	}

	@Test
	void afterAnIdeaThatIsNoLongerInTheFileTheFirstOneComes() {
		assertThat(read("ideas: [a, b]").after("old")).isEqualTo("a");
	}

	@ParameterizedTest
	@ValueSource(strings = { "ideas: [a]", "ideas: [a, a]", "ideas: a", "ideas: [a, b]\nmore: c" })
	void aListThatCannotTakeTurnsIsRefusedWithFileAndLine(String text) {
		assertThatExceptionOfType(ConversationFileProblem.class).isThrownBy(() -> read(text))
			.withMessageStartingWith("ideas.yaml, line ");
	}

}
