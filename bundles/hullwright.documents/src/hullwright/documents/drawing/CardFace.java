/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.drawing;

import hullwright.documents.scene.Extent;
import hullwright.documents.scene.Ink;
import hullwright.documents.scene.LetterWidths;
import hullwright.documents.scene.Shape;
import hullwright.documents.scene.Stroke;
import hullwright.network.FittedDevice;
import hullwright.network.part.PartIdentity;
import java.util.stream.Collectors;

/**
 * What a card shows: the name, what it is, and what it gets.
 */
final class CardFace {

	private static final double PAD = 8;
	private static final double ROOM = Card.WIDTH - 2 * PAD;

	private final Margins margins;
	private final Marks marks;

	CardFace(Margins margins, Marks marks) {
		this.margins = margins;
		this.marks = marks;
	}

	Shape draw(Card card) {
		Pencil pencil = new Pencil();
		Extent at = card.extent;
		boolean prepared = card.device.isEmpty() && card.tee.isEmpty();
		Stroke edge = new Stroke(Ink.THING_EDGE, 1, prepared ? Stroke.Dash.SHORT : Stroke.Dash.NONE);
		pencil.box(at.x(), at.y(), at.width(), at.height(), 3, Ink.THING, edge);
		String name = simpleName(card.element);
		String title = card.device.map(device -> title(device.model().identity())).or(() -> card.tee.map(tee -> title(tee.part().identity())))
				.orElse("prepared for a device");
		pencil.bold(at.x() + PAD, at.y() + 16, LetterWidths.fit(name, 12, true, ROOM - 12), 12, Ink.TEXT);
		pencil.text(at.x() + PAD, at.y() + 30, LetterWidths.fit(title, 10, false, ROOM), 10, Ink.SOFT_TEXT);
		card.device.ifPresent(device -> pencil.text(at.x() + PAD, at.y() + 44, LetterWidths.fit(gets(device), 10, false, ROOM), 10,
				margins.isTooLow(device.name()) ? Ink.ERROR : Ink.TEXT));
		marks.at(card.element).ifPresent(severity -> pencil.mark(at.right() - 4, at.y() + 4, severity));
		return new Shape.Thing(card.element, name + (title.isEmpty() ? "" : ", " + title) + card.device.map(this::more).orElse("") + marks.messages(card.element),
				at.grown(2), pencil.shapes());
	}

	private String gets(FittedDevice device) {
		return margins.ofDevice(device.name()).orElseGet(() -> own(device));
	}

	private static String own(FittedDevice device) {
		return device.settings().feeds().isEmpty() ? "" : device.settings().feeds().stream().map(feed -> "fed by " + simpleName(feed.supply()))
				.distinct().collect(Collectors.joining(", "));
	}

	private String more(FittedDevice device) {
		StringBuilder more = new StringBuilder();
		if (!device.label().isEmpty()) {
			more.append("\nlabel ").append(device.label());
		}
		margins.ofDevice(device.name()).ifPresent(text -> more.append('\n').append(text));
		String own = own(device);
		if (!own.isEmpty()) {
			more.append('\n').append(own);
		}
		return more.toString();
	}

	static String title(PartIdentity part) {
		return part.title().isEmpty() ? part.name() : part.title();
	}

	static String simpleName(String qualified) {
		return qualified.substring(qualified.lastIndexOf('.') + 1);
	}
}
