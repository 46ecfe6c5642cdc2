/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import hullwright.spec.Catalog;
import hullwright.spec.DataNetwork;
import hullwright.spec.Device;
import hullwright.spec.Hull;
import hullwright.spec.Option;
import hullwright.spec.PartType;
import hullwright.spec.Place;
import hullwright.spec.PortHolder;
import hullwright.spec.PowerSource;
import hullwright.spec.Series;
import java.util.LinkedHashMap;
import java.util.Map;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.lsp4j.SymbolKind;
import org.eclipse.xtext.ide.server.symbol.DocumentSymbolMapper.DocumentSymbolKindProvider;

/**
 * The kind of each name in the outline, in those terms of the language server protocol that come nearest; editors choose icons by it.
 */
public class OutlineKind extends DocumentSymbolKindProvider {

	private static final Map<Class<?>, SymbolKind> KINDS = new LinkedHashMap<>();

	static {
		KINDS.put(Series.class, SymbolKind.Class);
		KINDS.put(DataNetwork.class, SymbolKind.Interface);
		KINDS.put(Device.class, SymbolKind.Object);
		KINDS.put(PortHolder.class, SymbolKind.Field);
		KINDS.put(Hull.class, SymbolKind.Constant);
		KINDS.put(Option.class, SymbolKind.EnumMember);
		KINDS.put(Place.class, SymbolKind.Namespace);
		KINDS.put(PowerSource.class, SymbolKind.Event);
		KINDS.put(Catalog.class, SymbolKind.Package);
		KINDS.put(PartType.class, SymbolKind.Struct);
	}

	@Override
	protected SymbolKind getSymbolKind(EClass type) {
		Class<?> found = type.getInstanceClass();
		return KINDS.entrySet().stream().filter(each -> found != null && each.getKey().isAssignableFrom(found)).map(Map.Entry::getValue).findFirst()
				.orElse(SymbolKind.Property);
	}
}
