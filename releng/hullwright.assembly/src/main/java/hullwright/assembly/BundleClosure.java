/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.assembly;

import java.lang.module.ModuleFinder;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Which bundles a program needs to run on a plain class path: those that its main bundle requires, those whose packages it
 * imports, and so on, and also those that contribute to an extension point of one of ours, since nobody requires them.
 * What a manifest calls optional is left out.
 */
final class BundleClosure {

	/** Extension points of ours start like this; contributions to the platform's are of no use without the platform. */
	private static final String OURS = "hullwright.";
	/** What needs this bundle is a window's, not a command line's. */
	private static final String WIDGETS = "org.eclipse.swt";

	private final Map<String, Bundle> byName = new TreeMap<>();
	private final Map<String, List<Bundle>> byPackage = new TreeMap<>();
	private final Set<String> packagesOfJava = ModuleFinder.ofSystem().findAll().stream()
			.flatMap(module -> module.descriptor().packages().stream()).collect(Collectors.toSet());

	/** @param bundles all that there are */
	BundleClosure(Collection<Bundle> bundles) {
		bundles.stream().sorted(Comparator.comparing(Bundle::name)).forEach(bundle -> {
			Bundle other = byName.putIfAbsent(bundle.name(), bundle);
			if (other != null) {
				throw new IllegalArgumentException("two jars for one bundle: " + other.jar() + ", " + bundle.jar());
			}
			if (!bundle.fragment()) {
				bundle.offersPackages()
						.forEach(name -> byPackage.computeIfAbsent(name, unused -> new ArrayList<>()).add(bundle));
			}
		});
	}

	/**
	 * The bundles that a program needs, its own first.
	 *
	 * @throws IllegalArgumentException if one of them is not there
	 */
	List<Bundle> of(String mainBundle) {
		Map<String, Bundle> needed = new LinkedHashMap<>();
		add(required(mainBundle, "the command line"), needed);
		boolean grown = true;
		while (grown) {
			grown = false;
			for (Bundle contributor : contributorsTo(needed.values())) {
				Map<String, Bundle> withContributor = new LinkedHashMap<>(needed);
				add(contributor, withContributor);
				if (!withContributor.containsKey(WIDGETS) && withContributor.size() > needed.size()) {
					needed = withContributor;
					grown = true;
				}
			}
		}
		List<Bundle> ordered = new ArrayList<>(needed.values());
		ordered.sort(Comparator.comparing(bundle -> !bundle.name().startsWith(OURS)));
		return ordered;
	}

	private List<Bundle> contributorsTo(Collection<Bundle> needed) {
		Set<String> points = needed.stream().filter(bundle -> bundle.name().startsWith(OURS))
				.flatMap(bundle -> bundle.extensionPoints().stream()).collect(Collectors.toSet());
		return byName.values().stream().filter(bundle -> !Collections.disjoint(bundle.contributesTo(), points)).toList();
	}

	private void add(Bundle first, Map<String, Bundle> needed) {
		Deque<Bundle> open = new ArrayDeque<>(List.of(first));
		while (!open.isEmpty()) {
			Bundle bundle = open.remove();
			if (needed.putIfAbsent(bundle.name(), bundle) != null) {
				continue;
			}
			bundle.needsBundles().forEach(name -> open.add(required(name, bundle.name())));
			for (String name : bundle.needsPackages()) {
				if (packagesOfJava.contains(name)) {
					continue;
				}
				List<Bundle> offers = byPackage.getOrDefault(name, List.of());
				if (offers.isEmpty()) {
					throw new IllegalArgumentException(bundle.name() + " needs the package " + name + ", which no bundle offers");
				}
				if (offers.stream().noneMatch(offer -> needed.containsKey(offer.name()))) {
					open.add(offers.get(0));
				}
			}
		}
	}

	private Bundle required(String name, String by) {
		// The framework's own alias.
		Bundle bundle = byName.get("system.bundle".equals(name) ? "org.eclipse.osgi" : name);
		if (bundle == null) {
			throw new IllegalArgumentException(by + " needs the bundle " + name + ", which is neither built nor in the target file");
		}
		return bundle;
	}
}
