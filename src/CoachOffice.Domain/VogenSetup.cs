using Vogen;

[assembly: VogenDefaults(
    conversions: Conversions.None,
    debuggerAttributes: DebuggerAttributeGeneration.Basic,
    staticAbstractsGeneration: StaticAbstractsGeneration.MostCommon | StaticAbstractsGeneration.InstanceMethodsAndProperties)]
