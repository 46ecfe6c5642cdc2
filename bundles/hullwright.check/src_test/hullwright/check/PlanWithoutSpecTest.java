/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import hullwright.lang.HullLanguage;
import hullwright.lang.imports.VisibleCatalogs;
import hullwright.resolve.SeriesPlan;
import hullwright.spec.Series;
import org.eclipse.emf.ecore.EObject;
import org.junit.jupiter.api.Test;

/**
 * A plan is used without a lock and is kept as long as its text stands, so it must hold nothing of the spec: EMF is not made for
 * threads, and an editor would keep every text that was ever typed.
 */
class PlanWithoutSpecTest {

	@Test
	void nothingOfTheSpecIsReachable() throws IOException, IllegalAccessException {
		String text = Files.readString(Path.of("../hullwright.lang/src_test/hullwright/lang/whole-language.hull"));
		ReadProject project = new SpecReader().read(Snapshot.of(Map.of("boat.hull", text)));
		Series series = (Series) project.files().get("boat.hull").getDeclarations().stream().filter(Series.class::isInstance).findFirst().orElseThrow();
		SeriesPlan plan = new SeriesPlan(series, HullLanguage.services().getInstance(VisibleCatalogs.class).from(series), new TextOrigins());
		Set<Object> reached = reachable(plan);
		assertTrue(reached.size() > 1000, reached.size() + " objects were reached");
		Set<String> ofTheSpec = new TreeSet<>();
		reached.stream().filter(EObject.class::isInstance).forEach(object -> ofTheSpec.add(object.getClass().getSimpleName()));
		assertEquals(Set.of(), ofTheSpec);
	}

	private static Set<Object> reachable(Object from) throws IllegalAccessException {
		Set<Object> reached = Collections.newSetFromMap(new IdentityHashMap<>());
		Deque<Object> open = new ArrayDeque<>(List.of(from));
		while (!open.isEmpty()) {
			Object object = open.pop();
			if (!reached.add(object) || object instanceof EObject) {
				continue;
			} else if (object instanceof Collection<?> collection) {
				collection.stream().filter(each -> each != null).forEach(open::push);
			} else if (object instanceof Map<?, ?> map) {
				map.forEach((key, value) -> open.addAll(List.of(key, value)));
			} else if (object instanceof Optional<?> optional) {
				optional.ifPresent(open::push);
			} else if (object.getClass().getName().startsWith("hullwright.")) {
				for (Class<?> type = object.getClass(); type != null && type.getName().startsWith("hullwright."); type = type.getSuperclass()) {
					for (Field field : type.getDeclaredFields()) {
						if (!Modifier.isStatic(field.getModifiers()) && !field.getType().isPrimitive()) {
							field.setAccessible(true);
							Object value = field.get(object);
							if (value != null) {
								open.push(value);
							}
						}
					}
				}
			}
		}
		return reached;
	}
}
