using System.Buffers.Binary;
using System.Text;

namespace CoachOffice.UseCases.Tests.Media;

/// <summary>Files no camera would write, byte by byte.</summary>
internal static class CraftedFiles
{
    /// <summary>What the exchangeable image file format of a telephone says beside the pixels.</summary>
    public const string Place = "GPS-51.4779-N";

    /// <summary>The same JPEG with an orientation and a place in it.</summary>
    public static byte[] WithExif(byte[] jpeg, byte orientation)
    {
        byte[] tiff =
        [
            .. "Exif\0\0"u8, .. "II"u8, 0x2A, 0, 8, 0, 0, 0,
            2, 0,
            0x12, 0x01, 3, 0, 1, 0, 0, 0, orientation, 0, 0, 0,
            0x0E, 0x01, 2, 0, (byte)(Place.Length + 1), 0, 0, 0, 38, 0, 0, 0,
            0, 0, 0, 0,
            .. Encoding.ASCII.GetBytes(Place), 0,
        ];
        var length = (ushort)(tiff.Length + 2);
        return [.. jpeg[..2], 0xFF, 0xE1, (byte)(length >> 8), (byte)length, .. tiff, .. jpeg[2..]];
    }

    /// <summary>A PNG of a few dozen bytes that says it holds so many pixels.</summary>
    public static byte[] PngThatClaims(int width, int height)
    {
        var header = new byte[13];
        BinaryPrimitives.WriteInt32BigEndian(header, width);
        BinaryPrimitives.WriteInt32BigEndian(header.AsSpan(4), height);
        (header[8], header[9]) = (8, 2);
        return [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A, .. Chunk("IHDR", header), .. Chunk("IDAT", [0x78, 0x9C, 0x03, 0x00, 0x00, 0x00, 0x00, 0x01]), .. Chunk("IEND", [])];
    }

    private static byte[] Chunk(string type, byte[] data)
    {
        byte[] body = [.. Encoding.ASCII.GetBytes(type), .. data];
        var length = new byte[4];
        var check = new byte[4];
        BinaryPrimitives.WriteInt32BigEndian(length, data.Length);
        BinaryPrimitives.WriteUInt32BigEndian(check, Crc(body));
        return [.. length, .. body, .. check];
    }

    // RFC 2083, appendix 15.
    private static uint Crc(byte[] bytes)
    {
        var crc = uint.MaxValue;
        foreach (var b in bytes)
        {
            crc ^= b;
            for (var bit = 0; bit < 8; bit++) crc = (crc & 1) == 1 ? 0xEDB88320 ^ (crc >> 1) : crc >> 1;
        }

        return ~crc;
    }
}
