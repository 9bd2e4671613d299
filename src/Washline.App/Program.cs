using System.Text;
using Washline.App;
using Washline.App.Storage;

Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
Console.InputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
return WashlineProgram.Run(args, new PipedText(Console.OpenStandardInput), Console.Out, Console.Error);
