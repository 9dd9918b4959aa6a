package measuredwalk.journal;

import measuredwalk.signs.Coded;

/** What was sent of a dog beside words. */
public enum AttachmentKind implements Coded {

	/** A still picture. */
	PHOTO,
	/** A moving picture. */
	VIDEO,
	/** A file of another kind. */
	DOCUMENT

}
