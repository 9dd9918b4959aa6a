package measuredwalk.messaging;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.DataAccessException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.TransactionException;

/**
 * Makes the pictures and files that messages name, each by the source of its kind. A
 * message must arrive even where what goes with it cannot be made.
 */
@Service
public class Enclosures {

	private static final Logger log = LoggerFactory.getLogger(Enclosures.class);

	private final Map<String, PictureSource> pictures;

	private final Map<String, DocumentSource> documents;

	Enclosures(List<PictureSource> pictures, List<DocumentSource> documents) {
		this.pictures = pictures.stream().collect(Collectors.toMap(PictureSource::kind, Function.identity()));
		this.documents = documents.stream().collect(Collectors.toMap(DocumentSource::kind, Function.identity()));
	}

	/**
	 * Draws a picture.
	 * @param picture the picture
	 * @return the bytes of a PNG file, or empty when it cannot be drawn
	 * @throws DataAccessException when the database is away, so that it is worth trying
	 * again
	 * @throws TransactionException when the database is away
	 */
	public Optional<byte[]> png(MessagePicture picture) {
		return made(this.pictures, picture.name(), PictureSource::png);
	}

	/**
	 * Makes a file.
	 * @param document the file
	 * @return the file, or empty when it cannot be made
	 * @throws DataAccessException when the database is away, so that it is worth trying
	 * again
	 * @throws TransactionException when the database is away
	 */
	public Optional<Document> file(MessageDocument document) {
		return made(this.documents, document.name(), DocumentSource::document);
	}

	private static <S, T> Optional<T> made(Map<String, S> sources, String name,
			BiFunction<S, String, Optional<T>> making) {
		String[] parts = name.split("/", 2);
		@Nullable S source = sources.get(parts[0]);
		if (source == null || parts.length < 2) {
			log.warn("Nothing makes '{}'; its message goes without.", name);
			return Optional.empty();
		}
		try {
			return making.apply(source, parts[1]);
		}
		catch (DataAccessException | TransactionException ex) {
			throw ex;
		}
		catch (RuntimeException | LinkageError ex) {
			log.warn("Something of the kind '{}' could not be made; its message goes without.", parts[0], ex);
			return Optional.empty();
		}
	}

}
