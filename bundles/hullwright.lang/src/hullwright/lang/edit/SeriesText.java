/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.edit;

import hullwright.spec.Series;
import java.util.List;
import java.util.Optional;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.nodemodel.ILeafNode;

/**
 * Writes what a series says of its sold boats and of the findings that the yard lives with, each beside its like.
 */
public final class SeriesText {

	private SeriesText() {
	}

	/** A hull, as the last one; empty if the series has no block. */
	public static Optional<TextEdit> hull(Series series, String statement) {
		return added(series, series.getHulls(), statement);
	}

	/** A waiver, below the others. The first one stands before the hulls, with an empty line between. */
	public static Optional<TextEdit> waiver(Series series, String statement) {
		if (series.getWaivers().isEmpty() && !series.getHulls().isEmpty()) {
			TextLines lines = new TextLines(series);
			return Optional.of(lines.beside(series.getHulls().get(0), true, statement + lines.lineEnd()));
		}
		return added(series, series.getWaivers(), statement);
	}

	private static Optional<TextEdit> added(Series series, List<? extends EObject> likes, String statement) {
		TextLines lines = new TextLines(series);
		if (!likes.isEmpty()) {
			return Optional.of(lines.beside(likes.get(likes.size() - 1), false, statement));
		}
		Optional<ILeafNode> close = BlockBraces.close(series);
		boolean first = series.eContents().isEmpty();
		return close.map(brace -> lines.beforeBrace(brace, null, statement)).map(edit -> first ? edit : parted(lines, edit));
	}

	/** The same with an empty line before it. */
	static TextEdit parted(TextLines lines, TextEdit edit) {
		return new TextEdit(edit.offset(), edit.length(), lines.lineEnd() + edit.replacement());
	}
}
