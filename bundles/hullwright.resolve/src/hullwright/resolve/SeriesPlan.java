/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

import org.eclipse.emf.common.util.TreeIterator;
import org.eclipse.emf.ecore.EObject;

import hullwright.network.Boat;
import hullwright.network.BoatSeries;
import hullwright.network.FittedDevice;
import hullwright.network.Network;
import hullwright.network.Origin;
import hullwright.network.PartsOnOffer;
import hullwright.network.Selection;
import hullwright.network.Waiver;
import hullwright.network.layout.Layout;
import hullwright.network.part.Cable;
import hullwright.network.part.Part;
import hullwright.spec.Catalog;
import hullwright.spec.DataNetwork;
import hullwright.spec.Device;
import hullwright.spec.Hull;
import hullwright.spec.Series;

/**
 * A series copied out of EMF: all that is needed to make any of its boats. Immutable; making boats needs no lock.
 */
public final class SeriesPlan {

	private final String name;
	private final String revision;
	private final Origin origin;
	private final OptionSpace options;
	private final List<NetworkPlan> networks = new ArrayList<>();
	private final List<HullPlan> hulls = new ArrayList<>();
	private final ItemsPlan items;
	private final PowerPlan power;
	private final Layout layout;
	private final List<Waiver> waivers;
	private final PartsOnOffer partsOnOffer;
	private final BoatSeries outline;
	private final int devices;

	/**
	 * Copies a series that parsed and linked without errors. The caller holds the lock that guards the spec.
	 *
	 * @param series the series
	 * @param visibleCatalogs the catalogs whose parts it can name
	 * @param places where its elements stand in the text
	 */
	public SeriesPlan(Series series, List<Catalog> visibleCatalogs, TextPlaces places) {
		name = series.getName();
		revision = Copying.text(series.getRevision());
		origin = places.of(series, name);
		options = new OptionSpace(series);
		CatalogParts parts = new CatalogParts();
		Copying copying = new Copying(parts, new NamesInText(series), places);
		Map<String, Optional<Cable>> usualCables = new HashMap<>();
		for (DataNetwork network : series.getNetworks()) {
			NetworkPlan plan = NetworkPlan.of(network, copying);
			networks.add(plan);
			usualCables.put(plan.name(), plan.usualCable());
		}
		items = new ItemsCopy(copying).of(series.getItems());
		for (Hull hull : series.getHulls()) {
			hulls.add(new HullCopy(usualCables, copying).of(hull));
		}
		power = PowerPlan.of(series, copying);
		layout = LayoutPlan.of(series, copying);
		waivers = series.getWaivers().stream().map(waiver -> new Waiver(waiver.getRule(), copying.names().ofOwn(waiver.getElement()),
				Copying.text(waiver.getReason()), Optional.ofNullable(waiver.getUntil()), places.of(waiver, name))).toList();
		List<Part> offered = new ArrayList<>();
		visibleCatalogs.forEach(catalog -> catalog.getParts().forEach(type -> parts.of(type).ifPresent(offered::add)));
		partsOnOffer = new PartsOnOffer(offered);
		outline = SeriesCopy.of(series, options, waivers, partsOnOffer, places);
		devices = count(series, Device.class);
	}

	private static int count(Series series, Class<? extends EObject> kind) {
		int found = 0;
		for (TreeIterator<EObject> contents = series.eAllContents(); contents.hasNext();) {
			found += kind.isInstance(contents.next()) ? 1 : 0;
		}
		return found;
	}

	/** The name of the series. */
	public String name() {
		return name;
	}

	/** Its place in the text. */
	public Origin origin() {
		return origin;
	}

	/** The findings that the yard lives with. */
	public List<Waiver> waivers() {
		return waivers;
	}

	/** What it offers and sells. */
	public BoatSeries outline() {
		return outline;
	}

	/** Its options and which of them go together. */
	public OptionSpace options() {
		return options;
	}

	/** How many devices the text names, whichever boats have them. */
	public int devices() {
		return devices;
	}

	/** The names of the hulls that are sold, in the order of the text. */
	public List<String> hullNames() {
		return hulls.stream().map(HullPlan::name).toList();
	}

	/** A sold hull as a selection, or empty if there is none of this name. */
	public Optional<Selection> hull(String hullName) {
		return hulls.stream().filter(hull -> hull.name().equals(hullName)).findFirst().map(hull -> new Selection(hull.options(), Optional.of(hull.name())));
	}

	/** The boat with these options, whether or not they can be ordered together. */
	public static Selection ordered(SortedSet<String> options) {
		return new Selection(new TreeSet<>(options), Optional.empty());
	}

	/** The boat of a selection. */
	public Boat boat(Selection selection) {
		Order order = Order.of(selection);
		HullPlan hull = selection.hull()
				.flatMap(hullName -> hulls.stream().filter(each -> each.name().equals(hullName)).findFirst())
				.orElse(HullPlan.NONE);
		ItemsPlan beside = items.and(hull.items());
		Map<String, FittedDevice> others = beside.devices(order, hull);
		List<Network> fitted = new ArrayList<>(networks.size());
		networks.forEach(network -> network.on(order, hull, others).ifPresent(fitted::add));
		Set<String> onBoard = DevicesOnBoard.names(fitted, others.values());
		return new Boat(name, revision, selection, fitted, List.copyOf(others.values()), beside.lines(order, hull, onBoard),
				beside.hops(order, hull, onBoard), power.on(order), layout, waivers,
				partsOnOffer, origin);
	}
}
