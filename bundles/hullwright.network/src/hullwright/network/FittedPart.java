/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network;

import hullwright.network.part.Part;
import java.util.ArrayList;
import java.util.List;

/**
 * A part of a catalog where it is fitted.
 *
 * @param part the part
 * @param place the element that it is on board
 */
public record FittedPart(Part part, Origin place) {

	/** All parts of a boat, those of its networks first; what the text measures without naming a part, such as a lead, is none. */
	static List<FittedPart> of(Boat boat) {
		List<FittedPart> parts = new ArrayList<>();
		for (Network network : boat.networks()) {
			network.backbones().forEach(each -> add(each.elements(), parts));
			network.drops().forEach(each -> add(each.legs(), parts));
			network.feeds().forEach(each -> add(each.legs(), parts));
			network.joins().forEach(each -> add(each.legs(), parts));
			network.caps().forEach(each -> parts.add(new FittedPart(each.cap(), each.origin())));
		}
		boat.fittedDevices().forEach(each -> parts.add(new FittedPart(each.model(), each.origin())));
		boat.serialLines().forEach(line -> line.cable().ifPresent(cable -> parts.add(new FittedPart(cable, line.origin()))));
		boat.power().supplies().forEach(supply -> supply.fuse().flatMap(fuse -> fuse.kind())
				.ifPresent(kind -> parts.add(new FittedPart(kind, supply.origin()))));
		return List.copyOf(parts);
	}

	private static void add(List<Element> elements, List<FittedPart> parts) {
		for (Element element : elements) {
			if (element instanceof Fitting fitting) {
				parts.add(new FittedPart(fitting.part(), element.origin()));
			} else if (element instanceof CableRun run) {
				run.cable().ifPresent(cable -> parts.add(new FittedPart(cable, element.origin())));
			}
		}
	}
}
