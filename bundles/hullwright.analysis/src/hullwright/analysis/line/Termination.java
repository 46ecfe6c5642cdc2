/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.line;

import java.util.List;
import java.util.Optional;

import hullwright.network.Backbone;
import hullwright.network.Drop;
import hullwright.network.Element;
import hullwright.network.Feed;
import hullwright.network.Fitting;
import hullwright.network.part.Connector;
import hullwright.network.part.Cord;
import hullwright.network.part.DeviceModel;
import hullwright.network.part.Terminator;

/**
 * How the two ends of a backbone are terminated. Besides terminators, a device or a power cord with a resistor built in
 * terminates: at the end of the walk, or plugged into a port of the part there.
 *
 * @param start the part that terminates the end where the text starts, or that holds what does, if there is one
 * @param end the part that terminates the end where the text ends, or that holds what does, if there is one
 * @param openAtStart the connector that lies open at the start, if the start is not terminated and the connector is known
 * @param openAtEnd the connector that lies open at the end, if the end is not terminated and the connector is known
 */
public record Termination(Optional<Fitting> start, Optional<Fitting> end, Optional<Connector> openAtStart,
		Optional<Connector> openAtEnd) {

	/**
	 * The termination of a backbone. A single terminator ends one side only, that where the text starts.
	 *
	 * @param drops the drops of its network
	 * @param feeds the feeds of its network
	 */
	public static Termination of(Backbone backbone, List<Drop> drops, List<Feed> feeds) {
		List<Element> elements = backbone.elements();
		if (elements.isEmpty()) {
			return new Termination(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
		}
		Element first = elements.get(0);
		Element last = elements.get(elements.size() - 1);
		Optional<Fitting> start = terminating(first, drops, feeds);
		Optional<Fitting> end = elements.size() == 1 && start.isPresent() ? Optional.empty() : terminating(last, drops, feeds);
		return new Termination(start, end,
				start.isPresent() ? Optional.empty() : first.towardsStart(),
				end.isPresent() ? Optional.empty() : last.towardsEnd());
	}

	private static Optional<Fitting> terminating(Element end, List<Drop> drops, List<Feed> feeds) {
		return end instanceof Fitting fitting && (terminates(end) || isPluggedInto(end, drops, feeds))
				? Optional.of(fitting)
				: Optional.empty();
	}

	private static boolean terminates(Element element) {
		return element instanceof Fitting fitting && (fitting.part() instanceof Terminator
				|| fitting.part() instanceof DeviceModel device && device.terminates().isPresent());
	}

	private static boolean isPluggedInto(Element element, List<Drop> drops, List<Feed> feeds) {
		return drops.stream()
				.filter(drop -> drop.from().part().equals(element.name()))
				.anyMatch(drop -> drop.device().flatMap(device -> device.model().terminates()).isPresent())
				|| feeds.stream()
						.filter(feed -> feed.from().part().equals(element.name()))
						.flatMap(feed -> feed.legs().stream())
						.anyMatch(leg -> leg instanceof Fitting fitting && fitting.part() instanceof Cord cord && cord.terminates().isPresent());
	}
}
