/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.edit;

import hullwright.spec.AdapterType;
import hullwright.spec.Backbone;
import hullwright.spec.BackboneElement;
import hullwright.spec.BackboneItem;
import hullwright.spec.BackbonePart;
import hullwright.spec.CableType;
import hullwright.spec.CapType;
import hullwright.spec.Catalog;
import hullwright.spec.CordType;
import hullwright.spec.DataNetwork;
import hullwright.spec.DevicePort;
import hullwright.spec.DeviceType;
import hullwright.spec.End;
import hullwright.spec.FeedThroughType;
import hullwright.spec.IsolatorType;
import hullwright.spec.PartType;
import hullwright.spec.Series;
import hullwright.spec.SpecFile;
import hullwright.spec.SupplySource;
import hullwright.spec.TapType;
import hullwright.spec.TeeType;
import hullwright.spec.TerminatorType;
import java.util.List;
import java.util.Optional;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.EcoreUtil2;
import org.eclipse.xtext.nodemodel.ILeafNode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

/**
 * Puts a part of a catalog where a person's cursor is: what the backbone is made of beside the item at the cursor, a device, a cap
 * or a cord on a free port.
 */
public final class PartInsertion {

	/** Why a part cannot go anywhere. */
	public static final class Refused extends Exception {

		private static final long serialVersionUID = 1L;

		Refused(String sentence) {
			super(sentence);
		}
	}

	private final PartNames parts;

	/** Insertions into a text that was parsed without errors of syntax. */
	public PartInsertion(PartNames parts) {
		this.parts = parts;
	}

	/**
	 * The change that inserts a part.
	 *
	 * @param offset where the cursor is
	 * @throws Refused with a sentence for the person, if there is no place for it
	 */
	public TextEdit insert(SpecFile file, int offset, PartType part) throws Refused {
		DataNetwork network = network(file, offset);
		String name = parts.at(network, part.eContainer() instanceof Catalog catalog ? catalog.getName() : "", part.getName());
		if (part instanceof DeviceType device) {
			return drop(network, file, offset, device);
		} else if (part instanceof CapType cap) {
			return line(network, "cap " + port(network, file, offset, part, cap.getEnds()) + " with " + name);
		} else if (part instanceof CordType cord) {
			return line(network, "feed " + port(network, file, offset, part, cord.getEnds()) + " via " + name + " from " + supply(network));
		} else if (part instanceof CableType cable) {
			return beside(network, file, offset, "cable " + shortest(cable) + " of " + name);
		} else if (part instanceof TeeType) {
			return beside(network, file, offset, "tee " + FreeNames.like("spare", network) + " : " + name);
		} else if (part instanceof TapType) {
			return beside(network, file, offset, "tap " + FreeNames.like("feed", network) + " : " + name + " from " + supply(network));
		} else if (part instanceof IsolatorType) {
			return beside(network, file, offset, "isolator " + FreeNames.like("split", network) + " : " + name);
		} else if (part instanceof FeedThroughType) {
			return beside(network, file, offset, "wall " + FreeNames.like("passage", network) + " : " + name);
		} else if (part instanceof AdapterType) {
			return beside(network, file, offset, "adapter " + FreeNames.like("turn", network) + " : " + name);
		} else if (part instanceof TerminatorType) {
			return beside(network, file, offset, "terminator " + FreeNames.like("end", network) + " : " + name);
		}
		throw new Refused("A fuse is named where it protects something: write 'fuse 3 A of " + name + "' in a supply.");
	}

	private static EObject at(SpecFile file, int offset) {
		ILeafNode leaf = NodeModelUtils.findLeafNodeAtOffset(NodeModelUtils.findActualNodeFor(file).getRootNode(), offset);
		return leaf == null ? file : NodeModelUtils.findActualSemanticObjectFor(leaf);
	}

	private static DataNetwork network(SpecFile file, int offset) throws Refused {
		EObject here = at(file, offset);
		DataNetwork around = here == null ? null : EcoreUtil2.getContainerOfType(here, DataNetwork.class);
		if (around != null) {
			return around;
		}
		List<DataNetwork> all = EcoreUtil2.getAllContentsOfType(file, DataNetwork.class);
		return all.stream().filter(each -> NodeModelUtils.findActualNodeFor(each).getOffset() >= offset).findFirst()
				.or(() -> all.stream().findFirst())
				.orElseThrow(() -> new Refused("There is no network in this text that the part could go into."));
	}

	/** The item of the walk at an offset: the one around it, or the last one that begins before it. */
	private static Optional<BackboneItem> itemAt(DataNetwork network, SpecFile file, int offset) {
		EObject here = at(file, offset);
		BackboneItem around = here == null ? null : EcoreUtil2.getContainerOfType(here, BackboneItem.class);
		if (around != null) {
			return Optional.of(around);
		}
		Backbone walk = here == null ? null : EcoreUtil2.getContainerOfType(here, Backbone.class);
		BackboneItem before = null;
		if (walk != null) {
			for (BackboneItem item : EcoreUtil2.getAllContentsOfType(walk, BackboneItem.class)) {
				before = NodeModelUtils.findActualNodeFor(item).getOffset() <= offset ? item : before;
			}
		}
		return Optional.ofNullable(before);
	}

	private static TextEdit beside(DataNetwork network, SpecFile file, int offset, String statement) throws Refused {
		Optional<BackboneItem> item = itemAt(network, file, offset);
		if (item.isPresent()) {
			return new TextLines(item.get()).beside(item.get(), isLastTerminator(item.get()), statement);
		}
		Backbone walk = network.getBackbones().stream().findFirst()
				.orElseThrow(() -> new Refused("The network " + network.getName() + " has no backbone that the part could go into."));
		List<BackboneElement> elements = walk.getElements();
		if (elements.isEmpty()) {
			return BlockBraces.close(walk).map(close -> new TextLines(walk).beforeBrace(close, null, statement))
					.orElseThrow(() -> new Refused("The backbone of " + network.getName() + " has no end."));
		}
		BackboneElement last = elements.get(elements.size() - 1);
		return new TextLines(last).beside(last, last instanceof BackboneItem end && isLastTerminator(end), statement);
	}

	/** What goes beside the terminator at the end of a backbone goes before it. */
	private static boolean isLastTerminator(BackboneItem item) {
		Backbone walk = EcoreUtil2.getContainerOfType(item, Backbone.class);
		return item instanceof BackbonePart part && part.getType() instanceof TerminatorType && walk.getElements().indexOf(item) > 0;
	}

	private TextEdit drop(DataNetwork network, SpecFile file, int offset, DeviceType device) throws Refused {
		if (device.getLead() == null && device.getPorts().stream().noneMatch(DevicePort.class::isInstance)) {
			throw new Refused("The device " + device.getName() + " has no connector for a network. Declare it in the series: device " + device.getName() + "1 : "
					+ device.getName());
		}
		String port = port(network, file, offset, device, List.of());
		String cable = device.getLead() != null ? "" : " via " + cable(network, FreePorts.plug(device, List.of()));
		String name = parts.at(network, device.eContainer() instanceof Catalog catalog ? catalog.getName() : "", device.getName());
		return line(network, "drop " + port + cable + " to " + FreeNames.like(device.getName(), network) + " : " + name);
	}

	/** A length of a cable that has the connectors of a device: that of the backbone, or another one that can be named. */
	private String cable(DataNetwork network, End end) {
		CableType usual = network.getBackbones().isEmpty() ? null : network.getBackbones().get(0).getCable();
		if (usual != null && fits(usual, end)) {
			return shortest(usual);
		}
		for (Catalog catalog : parts.catalogs().from(network)) {
			for (PartType each : catalog.getParts()) {
				if (each instanceof CableType cable && fits(cable, end)) {
					return shortest(cable) + " of " + parts.at(network, catalog.getName(), cable.getName());
				}
			}
		}
		return usual == null ? "1 m" : shortest(usual);
	}

	private static boolean fits(CableType cable, End end) {
		return !cable.getEnds().isEmpty() && cable.getEnds().stream().anyMatch(each -> FreePorts.mate(each, end));
	}

	private static String shortest(CableType cable) {
		return cable.getStock().stream().filter(length -> length.toString().matches("[1-9].* m")).findFirst().or(() -> cable.getStock().stream().findFirst())
				.map(Object::toString).orElse("1 m");
	}

	private static String port(DataNetwork network, SpecFile file, int offset, PartType part, List<End> ends) throws Refused {
		BackbonePart near = itemAt(network, file, offset).filter(BackbonePart.class::isInstance).map(BackbonePart.class::cast).orElse(null);
		End end = FreePorts.plug(part, ends);
		return FreePorts.taking(end, network, near).orElseThrow(() -> new Refused("No port of the network " + network.getName() + " is free for " + part.getName()
				+ (end == null || end.getFamily() == null ? "" : " (" + end.getFamily().getName() + " " + end.getGender().getLiteral() + ")")
				+ ". Insert a tee or a block first."));
	}

	private static String supply(DataNetwork network) throws Refused {
		Series series = EcoreUtil2.getContainerOfType(network, Series.class);
		return series.getSources().stream().filter(SupplySource.class::isInstance).map(source -> source.getName()).findFirst()
				.orElseThrow(() -> new Refused("The series has no supply that could feed the network. Write one first, such as: supply house { 12 V; fuse 3 A }"));
	}

	private static TextEdit line(DataNetwork network, String statement) throws Refused {
		List<EObject> inside = network.eContents();
		return BlockBraces.close(network).map(close -> new TextLines(network).beforeBrace(close, inside.isEmpty() ? null : inside.get(inside.size() - 1), statement))
				.orElseThrow(() -> new Refused("The network " + network.getName() + " has no end."));
	}
}
