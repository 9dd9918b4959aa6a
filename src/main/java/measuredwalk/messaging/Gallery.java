package measuredwalk.messaging;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.DataAccessException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.TransactionException;

/** Draws the pictures that messages name, each by the source of its kind. */
@Service
public class Gallery {

	private static final Logger log = LoggerFactory.getLogger(Gallery.class);

	private final Map<String, PictureSource> sources;

	Gallery(List<PictureSource> sources) {
		this.sources = sources.stream().collect(Collectors.toMap(PictureSource::kind, Function.identity()));
	}

	/**
	 * Draws a picture. A message must arrive even where its picture cannot be drawn.
	 * @param picture the picture
	 * @return the bytes of a PNG file, or empty when it cannot be drawn
	 * @throws DataAccessException when the database is away, so that it is worth trying
	 * again
	 * @throws TransactionException when the database is away
	 */
	public Optional<byte[]> png(MessagePicture picture) {
		String[] name = picture.name().split("/", 2);
		PictureSource source = this.sources.get(name[0]);
		if (source == null || name.length < 2) {
			log.warn("Nothing draws the picture '{}'; its message goes without.", picture.name());
			return Optional.empty();
		}
		return drawn(source, name[1]);
	}

	private static Optional<byte[]> drawn(PictureSource source, String name) {
		try {
			return source.png(name);
		}
		catch (DataAccessException | TransactionException ex) {
			throw ex;
		}
		catch (RuntimeException | LinkageError ex) {
			log.warn("A picture of the kind '{}' could not be drawn; its message goes without.", source.kind(), ex);
			return Optional.empty();
		}
	}

}
