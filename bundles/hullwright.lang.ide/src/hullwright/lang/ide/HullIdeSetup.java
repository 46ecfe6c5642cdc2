package hullwright.lang.ide;

import com.google.inject.Guice;
import com.google.inject.Injector;
import hullwright.lang.HullRuntimeModule;
import hullwright.lang.HullStandaloneSetup;
import org.eclipse.xtext.util.Modules2;

/**
 * Initialization support for running Xtext languages as language servers.
 */
public class HullIdeSetup extends HullStandaloneSetup {

	@Override
	public Injector createInjector() {
		return Guice.createInjector(Modules2.mixin(new HullRuntimeModule(), new HullIdeModule()));
	}
	
}
