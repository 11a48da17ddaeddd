# The cutting engine's solvers are native code that needs glibc: no Alpine image, neither to build nor to run.
FROM mcr.microsoft.com/dotnet/sdk:10.0 AS build
WORKDIR /source
COPY .editorconfig global.json Directory.Build.props Directory.Packages.props ./
COPY src/ src/
COPY wwwroot/ wwwroot/
COPY openapi/ openapi/
COPY demo-data/ demo-data/
RUN dotnet restore src/PanelService/PanelService.csproj --locked-mode
RUN dotnet publish src/PanelService/PanelService.csproj --configuration Release --no-restore --output /app

FROM mcr.microsoft.com/dotnet/aspnet:10.0 AS run
LABEL org.opencontainers.image.title="Panel Service" \
      org.opencontainers.image.licenses="MIT"
WORKDIR /app
COPY --from=build /app ./

# One place for everything that is kept. The image's own user owns it; nothing runs as root.
RUN mkdir --mode=700 /data && chown "$APP_UID" /data
VOLUME ["/data"]
USER $APP_UID

ENV ASPNETCORE_HTTP_PORTS=8080 \
    PanelService__DataFolder=/data \
    DOTNET_EnableDiagnostics=0
EXPOSE 8080

# The image holds neither curl nor wget; bash opens the connection itself.
HEALTHCHECK --interval=30s --timeout=5s --retries=3 \
    CMD ["bash", "-c", "exec 3<>/dev/tcp/127.0.0.1/8080 && printf 'GET /health HTTP/1.0\\r\\nHost: localhost\\r\\n\\r\\n' >&3 && head -n 1 <&3 | grep -q ' 200 '"]

ENTRYPOINT ["dotnet", "PanelService.dll"]
