/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.line;

import hullwright.network.Backbone;
import hullwright.network.Element;
import hullwright.network.Fitting;
import hullwright.network.part.Connector;
import hullwright.network.part.DeviceModel;
import hullwright.network.part.Terminator;
import java.util.List;
import java.util.Optional;

/**
 * How the two ends of a backbone are terminated.
 *
 * @param start the terminator at the end where the text starts, if there is one
 * @param end the terminator at the end where the text ends, if there is one
 * @param openAtStart the connector that lies open at the start, if the start is not terminated and the connector is known
 * @param openAtEnd the connector that lies open at the end, if the end is not terminated and the connector is known
 * @param total how many terminators lie in the backbone, wherever they are; a device with a resistor built in is one
 */
public record Termination(Optional<Fitting> start, Optional<Fitting> end, Optional<Connector> openAtStart,
		Optional<Connector> openAtEnd, int total) {

	/** The termination of a backbone. A single terminator ends one side only, that where the text starts. */
	public static Termination of(Backbone backbone) {
		List<Element> elements = backbone.elements();
		int total = (int) elements.stream().filter(element -> asTerminator(element).isPresent()).count();
		if (elements.isEmpty()) {
			return new Termination(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), 0);
		}
		Element first = elements.get(0);
		Element last = elements.get(elements.size() - 1);
		Optional<Fitting> start = asTerminator(first);
		Optional<Fitting> end = elements.size() == 1 && start.isPresent() ? Optional.empty() : asTerminator(last);
		return new Termination(start, end,
				start.isPresent() ? Optional.empty() : first.towardsStart(),
				end.isPresent() ? Optional.empty() : last.towardsEnd(), total);
	}

	private static Optional<Fitting> asTerminator(Element element) {
		if (!(element instanceof Fitting fitting)) {
			return Optional.empty();
		}
		boolean terminates = fitting.part() instanceof Terminator
				|| fitting.part() instanceof DeviceModel device && device.terminates().isPresent();
		return terminates ? Optional.of(fitting) : Optional.empty();
	}
}
