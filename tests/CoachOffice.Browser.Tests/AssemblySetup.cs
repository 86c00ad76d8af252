[assembly: CaptureConsole]
