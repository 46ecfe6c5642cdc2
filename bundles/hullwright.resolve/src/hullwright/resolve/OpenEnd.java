/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import hullwright.network.CableRun;
import hullwright.network.Element;
import hullwright.network.Fitting;
import hullwright.network.Origin;
import hullwright.network.part.Cable;
import hullwright.network.part.Connector;
import hullwright.network.part.Part;
import hullwright.network.part.Tee;
import hullwright.quantity.Length;
import hullwright.spec.BackboneCable;
import hullwright.spec.BackboneItem;
import hullwright.spec.BackbonePart;
import hullwright.spec.CableLeg;
import hullwright.spec.CableType;
import hullwright.spec.Leg;
import hullwright.spec.PartLeg;
import hullwright.spec.PartType;
import hullwright.spec.PortReference;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a text that is still being written ends with: the connector that stands open after a piece of backbone or of a drop, laid
 * as the boat would be. It needs no boat, so it is there while the text is not sound yet.
 */
public final class OpenEnd {

	private static final Origin NOWHERE = new Origin("", "", 0, 0, 1, 1);

	private final CatalogParts parts = new CatalogParts();

	/** The record of a catalog part, or empty if the text does not say which part it is. */
	public Optional<Part> part(PartType type) {
		return parts.of(type);
	}

	/**
	 * The connector after a piece of backbone; empty where it begins, or where the text does not say what stands before.
	 *
	 * @param before the items from the start of the backbone, in their order
	 * @param usual the cable that the backbone is made of; may be null
	 */
	public Optional<Connector> ofBackbone(List<BackboneItem> before, CableType usual) {
		List<Element> run = new ArrayList<>();
		for (BackboneItem item : before) {
			if (item instanceof BackboneCable cable) {
				run.add(cable(cable.getType(), usual));
			} else if (item instanceof BackbonePart part) {
				parts.of(part.getType()).ifPresent(type -> run.add(fitting(type)));
			}
		}
		return end(run, Optional.empty());
	}

	/**
	 * The connector after the first legs of a drop, a feed or a join: that of the port if there are none.
	 *
	 * @param from the port
	 * @param legs the legs, in their order
	 * @param usual the cable of the network's backbone; may be null
	 */
	public Optional<Connector> ofLegs(PortReference from, List<Leg> legs, CableType usual) {
		List<Element> run = new ArrayList<>();
		for (Leg leg : legs) {
			if (leg instanceof CableLeg cable) {
				run.add(cable(cable.getType(), usual));
			} else if (leg instanceof PartLeg part) {
				parts.of(part.getType()).ifPresent(type -> run.add(fitting(type)));
			}
		}
		Optional<Connector> port = port(from);
		return run.isEmpty() ? port : end(run, port);
	}

	private Optional<Connector> port(PortReference from) {
		PartType holder = from == null ? null : holder(from);
		return holder == null || from.getPort() == null ? Optional.empty()
				: parts.of(holder).filter(Tee.class::isInstance).flatMap(tee -> ((Tee) tee).ports().getOrDefault(from.getPort(), Optional.empty()));
	}

	private static PartType holder(PortReference from) {
		return from.getPart() == null || from.getPart().eIsProxy() ? null : from.getPart().getType();
	}

	private Element cable(CableType own, CableType usual) {
		Optional<Cable> cable = parts.cable(own == null ? usual : own);
		return new CableRun("", cable, Length.ZERO, Optional.empty(), false, NOWHERE);
	}

	private static Element fitting(Part part) {
		return new Fitting("", part, false, Fitting.Details.at(Optional.empty(), Optional.empty()), NOWHERE);
	}

	private static Optional<Connector> end(List<Element> run, Optional<Connector> from) {
		return run.isEmpty() ? from : Laying.lay(run, from, Optional.empty()).get(run.size() - 1).towardsEnd();
	}
}
