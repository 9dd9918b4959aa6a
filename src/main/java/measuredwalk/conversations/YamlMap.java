package measuredwalk.conversations;

import java.io.Reader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/**
 * A map in a YAML file whose keys must all be known; every complaint names file and line.
 */
final class YamlMap {

	private static final int MOST_ALIASES = 0;

	private final String file;

	private final int line;

	private final Map<String, Node> values = new LinkedHashMap<>();

	private final Set<String> taken = new LinkedHashSet<>();

	private final UnaryOperator<String> wording;

	private YamlMap(String file, Node node, UnaryOperator<String> wording) {
		this.file = file;
		this.wording = wording;
		this.line = lineOf(node);
		if (!(node instanceof MappingNode mapping)) {
			throw problem(node, "here must stand keys with values, such as 'version: 1'.");
		}
		for (NodeTuple tuple : mapping.getValue()) {
			String key = plain(tuple.getKeyNode());
			if (this.values.put(key, tuple.getValueNode()) != null) {
				throw problem(tuple.getKeyNode(), "'" + key + "' stands here twice; keep one.");
			}
		}
	}

	static YamlMap read(String file, Reader text) {
		return read(file, text, UnaryOperator.identity());
	}

	/** Reads a file whose texts are said in other words; its keys stay as they are. */
	static YamlMap read(String file, Reader text, UnaryOperator<String> wording) {
		LoaderOptions options = new LoaderOptions();
		options.setMaxAliasesForCollections(MOST_ALIASES);
		try {
			Node root = new Yaml(options).compose(text);
			if (root == null) {
				throw new ConversationFileProblem(file, 1, "the file is empty.");
			}
			return new YamlMap(file, root, wording);
		}
		catch (MarkedYAMLException ex) {
			int line = (ex.getProblemMark() != null) ? ex.getProblemMark().getLine() + 1 : 1;
			throw new ConversationFileProblem(file, line, ex.getProblem() + "; mend the YAML here.");
		}
		catch (YAMLException ex) {
			throw new ConversationFileProblem(file, 1, ex.getMessage() + "; mend the YAML.");
		}
	}

	String text(String key) {
		return scalar(required(key));
	}

	/** A text that has to fit on a small screen. */
	String textOfAtMost(String key, int letters) {
		String text = text(key);
		if (text.length() > letters) {
			throw problemAt(key, "'" + key + "' is " + text.length() + " letters long; shorten it to " + letters + ".");
		}
		return text;
	}

	Optional<String> optionalText(String key) {
		return optional(key).map(this::scalar);
	}

	List<String> texts(String key) {
		return optional(key).map((node) -> items(node).stream().map(this::scalar).toList()).orElse(List.of());
	}

	/** A list of texts, each short enough for a small screen. */
	List<String> textsOfAtMost(String key, int letters) {
		List<Node> nodes = items(required(key));
		for (Node node : nodes) {
			int length = scalar(node).length();
			if (length > letters) {
				throw problem(node, "this text is " + length + " letters long; shorten it to " + letters + ".");
			}
		}
		return nodes.stream().map(this::scalar).toList();
	}

	List<YamlMap> maps(String key) {
		return items(required(key)).stream().map((node) -> new YamlMap(this.file, node, this.wording)).toList();
	}

	YamlMap map(String key) {
		return new YamlMap(this.file, required(key), this.wording);
	}

	Set<String> keys() {
		return this.values.keySet();
	}

	/** Complains of any key that nobody asked for. */
	void noOtherKeys() {
		for (Map.Entry<String, Node> entry : this.values.entrySet()) {
			if (!this.taken.contains(entry.getKey())) {
				throw problem(entry.getValue(),
						"'" + entry.getKey() + "' is not known here; known are " + String.join(", ", this.taken) + ".");
			}
		}
	}

	ConversationFileProblem problemAt(String key, String problem) {
		Node node = this.values.get(key);
		return (node != null) ? problem(node, problem) : new ConversationFileProblem(this.file, this.line, problem);
	}

	private Node required(String key) {
		return optional(key)
			.orElseThrow(() -> new ConversationFileProblem(this.file, this.line, "'" + key + "' is missing; add it."));
	}

	private Optional<Node> optional(String key) {
		this.taken.add(key);
		return Optional.ofNullable(this.values.get(key));
	}

	private List<Node> items(Node node) {
		if (node instanceof SequenceNode sequence) {
			return new ArrayList<>(sequence.getValue());
		}
		throw problem(node, "here must stand a list.");
	}

	private String scalar(Node node) {
		return this.wording.apply(plain(node));
	}

	private String plain(Node node) {
		if (node instanceof ScalarNode scalar && !scalar.getValue().isBlank()) {
			return scalar.getValue().strip();
		}
		throw problem(node, "here must stand a text.");
	}

	private ConversationFileProblem problem(Node node, String problem) {
		return new ConversationFileProblem(this.file, lineOf(node), problem);
	}

	private static int lineOf(Node node) {
		return node.getStartMark().getLine() + 1;
	}

}
