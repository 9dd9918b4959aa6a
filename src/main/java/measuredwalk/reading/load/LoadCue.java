package measuredwalk.reading.load;

import java.util.List;
import java.util.Set;

import measuredwalk.reading.words.Words;
import measuredwalk.signs.LoadKind;
import org.jspecify.annotations.Nullable;

/**
 * Words that tell of a load.
 *
 * @param role what they say
 * @param kind in what way a walk was harder; null for all roles but a load
 * @param forms the forms that each word may have
 */
record LoadCue(CueRole role, @Nullable LoadKind kind, List<Set<String>> forms) {

	LoadCue {
		forms = List.copyOf(forms);
	}

	/** Whether it stands at a place, within one clause by its marks. */
	boolean isAt(Words words, int from) {
		if (from + this.forms.size() > words.size()) {
			return false;
		}
		for (int at = 0; at < this.forms.size(); at++) {
			if (!this.forms.get(at).contains(words.form(from + at)) || (at > 0 && words.isBreakBefore(from + at))) {
				return false;
			}
		}
		return true;
	}

	int length() {
		return this.forms.size();
	}

}
