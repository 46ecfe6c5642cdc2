package hullwright.lang.ide;


/**
 * Use this class to register ide components.
 */
public class HullIdeModule extends AbstractHullIdeModule {
}
