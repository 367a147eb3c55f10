namespace Platewright.Formats.Programs;

/// <summary>What came of reading a motion program: one of both.</summary>
public sealed record ProgramReading(MotionProgram? Program, UnusableFile? Unusable);
